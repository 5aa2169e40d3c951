using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Domain.Venues;
using UnitsNet;

namespace Advance.Planning;

/// <summary>
/// Sees the venue's own places from the stage. They are measured from the venue's datum, and so is the stage: points stay where they are when the stage moves.
/// </summary>
internal static class VenueDatum
{
    /// <summary>Where the middle of a stage's downstage edge is, seen from the datum: there where nobody says otherwise; null where that is open, or said from something else.</summary>
    public static Spot? EdgeOf(Stage? stage, Venue venue) => stage?.DownstageEdge is not { } given ? new Spot(0, 0) : !given.Is(out var place) ? null : place switch
    {
        Place.Measured measured when IsDatum(measured.Of, venue) && SidewaysOf(measured) is { } across => new Spot(across, measured.Upstage.Meters),
        Place.AtThing thing when IsDatum(thing.Name, venue) => new Spot(0, 0),
        Place.AtPoint point => Spot.Of(point.X, point.Y),
        _ => null,
    };

    /// <summary>The venue, with the places of its points and of what stays clear measured from the first stage.</summary>
    public static Venue FromStage(Venue venue, Gig gig)
    {
        if (gig.Stages.Count == 0 || gig.Stages[0].DownstageEdge is not { } edge)
        {
            return venue;
        }

        var seen = EdgeOf(gig.Stages[0], venue);
        Given<Place> From(Given<Place> place) => Shifted(place, seen, edge);
        return venue with
        {
            RoofPoints = venue.RoofPoints.Select(points => (IReadOnlyList<RoofPoint>)[.. points.Select(point => point with { Place = From(point.Place) })]),
            KeepClear = [.. venue.KeepClear.Select(area => area with { Place = From(area.Place) })],
        };
    }

    private static Given<Place> Shifted(Given<Place> given, Spot? edge, Given<Place> asked)
    {
        if (!given.Is(out var place) || place is not (Place.AtPoint or Place.Measured { Of: null }))
        {
            return given;
        }

        var doubt = given.Doubt ?? asked.Doubt;
        return edge is { } at ? Given.Of(Shifted(place, at), given.At, doubt, given.How)
            : Given.Unknown<Place>(given.At, doubt ?? new Doubt("stage / downstage-edge", asked.At, LeftOut: true));
    }

    private static Place Shifted(Place place, Spot edge) => place switch
    {
        Place.AtPoint point => new Place.AtPoint(point.X - Length.FromMeters(edge.X), point.Y - Length.FromMeters(edge.Y), point.Z),
        Place.Measured measured when SidewaysOf(measured) is { } across => Measured(across - edge.X, measured.Upstage - Length.FromMeters(edge.Y)),
        _ => place,
    };

    private static Place.Measured Measured(double across, Length upstage) =>
        new(Length.FromMeters(Math.Abs(across)), across < 0 ? Side.StageRight : across > 0 ? Side.StageLeft : null, upstage, null);

    // Off centre is to the side of a thing that has one; nothing of the venue's has.
    private static double? SidewaysOf(Place.Measured place) => place.Side switch
    {
        Side.StageRight => -place.Sideways.Meters,
        Side.StageLeft => place.Sideways.Meters,
        _ => place.Sideways.Meters == 0 ? 0 : null,
    };

    // Lines have no places of their own: a line is the datum's where its words name it.
    private static bool IsDatum(string? line, Venue venue) => line is null || venue.Datum.Length == 0 || venue.Datum.Contains(line, StringComparison.OrdinalIgnoreCase);
}
