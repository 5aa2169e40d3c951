using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Places;

namespace Advance.Planning;

/// <summary>Finds where further stages stand, seen from the first, whose downstage edge all places are measured from.</summary>
internal static class StagePlaces
{
    /// <summary>One for each stage, in the order written.</summary>
    public static IReadOnlyList<StagePlace> Of(IReadOnlyList<Stage> stages, Ground ground) =>
        [.. stages.Select((stage, index) => new StagePlace(stage, index == 0 ? new Spot(0, 0) : Find(stage.DownstageEdge, stages[0].DownstageEdge, ground)))];

    private static Spot? Find(Given<Place>? edge, Given<Place>? first, Ground ground) => Measured(edge) switch
    {
        { Of: { } thing } measured when Measured(first) is { Of: { } same } from && string.Equals(thing, same, StringComparison.OrdinalIgnoreCase) =>
            new Spot(Across(measured) - Across(from), measured.Upstage.Meters - from.Upstage.Meters),
        _ => ground.Find(edge),
    };

    private static Place.Measured? Measured(Given<Place>? place) => place is { } given && given.Is(out var known) ? known as Place.Measured : null;

    private static double Across(Place.Measured place) => place.Side == Side.StageRight ? -place.Sideways.Meters : place.Sideways.Meters;
}
