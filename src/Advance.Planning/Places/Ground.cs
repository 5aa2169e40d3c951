using Advance.Domain.Facts;
using Advance.Domain.Places;

namespace Advance.Planning;

/// <summary>Turns places as they were said into spots. Knows one stage and the things that have been placed so far.</summary>
public sealed class Ground
{
    // What stands further out than the widest hall is a slip of the pen; no drawing could hold it.
    private const double Furthest = 1000;

    private readonly double width;
    private readonly double depth;
    private readonly Dictionary<string, Given<Place>> places = new(StringComparer.OrdinalIgnoreCase);
    private readonly HashSet<string> beingFound = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>The ground of a stage; a stage of unknown size has no areas.</summary>
    public Ground(Given<Size> size)
    {
        if (size.Is(out var known))
        {
            width = known.Width.Meters;
            depth = known.Depth.Meters;
        }
    }

    /// <summary>Remembers where a named thing stands, so that others may stand at it; the first thing of a name keeps it.</summary>
    public void Name(string name, Given<Place> place) => places.TryAdd(name, place);

    /// <summary>The spot, or null where the place is unknown, or said from something that is nowhere.</summary>
    /// <param name="place">As it was said.</param>
    /// <param name="side">The side of a mirrored thing, for <c>off centre</c>.</param>
    public Spot? Find(Given<Place>? place, Side? side = null) =>
        place is { } given && given.Is(out var known) && Find(known, side) is { } spot && IsNear(spot) ? spot : null;

    private Spot? Find(Place place, Side? side) => place switch
    {
        Place.Centre => new Spot(0, depth / 2),
        Place.AtPoint point => Spot.Of(point.X, point.Y),
        Place.AtThing thing => Named(thing.Name),
        Place.AtArea area => depth > 0 ? Middle(area.Area) : null,
        Place.Measured measured => Origin(measured.Of) is { } origin ? origin.Plus(Sideways(measured, side), measured.Upstage.Meters) : null,
        _ => null,
    };

    private Spot? Origin(string? thing) => thing is null ? new Spot(0, 0) : Named(thing);

    // A thing that stands at a thing that stands at the first is nowhere.
    private Spot? Named(string name)
    {
        if (!places.TryGetValue(name, out var place) || !beingFound.Add(name))
        {
            return null;
        }

        var spot = Find(place);
        beingFound.Remove(name);
        return spot;
    }

    private static double Sideways(Place.Measured place, Side? side) =>
        (place.Side ?? side) == Side.StageRight ? -place.Sideways.Meters : place.Sideways.Meters;

    // The nine areas are thirds of the deck; their names run from stage right to stage left, downstage first.
    private Spot Middle(StageArea area)
    {
        var (row, column) = Math.DivRem((int)area, 3);
        return new Spot((column - 1) * width / 3, ((row * 2) + 1) * depth / 6);
    }

    private static bool IsNear(Spot spot) => Math.Abs(spot.X) <= Furthest && Math.Abs(spot.Y) <= Furthest;
}
