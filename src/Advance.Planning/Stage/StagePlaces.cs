using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Domain.Venues;

namespace Advance.Planning;

/// <summary>Finds where further stages stand, seen from the first, whose downstage edge all places are measured from.</summary>
internal static class StagePlaces
{
    /// <summary>One for each stage, in the order written.</summary>
    public static IReadOnlyList<StagePlace> Of(IReadOnlyList<Stage> stages, Venue venue) =>
        [.. stages.Select((stage, index) => new StagePlace(stage, index == 0 ? new Spot(0, 0) : Find(stage, stages[0], venue)))];

    // Both from one line, wherever that is, or both from the datum.
    private static Spot? Find(Stage stage, Stage first, Venue venue) => Measured(stage.DownstageEdge) switch
    {
        null when stage.DownstageEdge is null => null,
        { Of: { } thing } measured when Measured(first.DownstageEdge) is { Of: { } same } from && string.Equals(thing, same, StringComparison.OrdinalIgnoreCase) =>
            new Spot(Across(measured) - Across(from), measured.Upstage.Meters - from.Upstage.Meters),
        _ => VenueDatum.EdgeOf(stage, venue) is { } one && VenueDatum.EdgeOf(first, venue) is { } other ? one.Plus(-other.X, -other.Y) : null,
    };

    private static Place.Measured? Measured(Given<Place>? place) => place is { } given && given.Is(out var known) ? known as Place.Measured : null;

    private static double Across(Place.Measured place) => place.Side == Side.StageRight ? -place.Sideways.Meters : place.Sideways.Meters;
}
