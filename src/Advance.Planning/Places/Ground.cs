using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Places;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Turns places as they were said into spots. Knows one stage and the things that have been placed so far.</summary>
public sealed class Ground
{
    // What stands further out than the widest hall is a slip of the pen; no drawing could hold it.
    private const double Furthest = 1000;

    private readonly Given<Size> size;
    private readonly Given<HeightFrom> height;
    private readonly Dictionary<string, (Given<Place> Place, Side? Side)> places = new(StringComparer.OrdinalIgnoreCase);
    private readonly HashSet<string> beingFound = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>The ground of a stage; a stage of unknown size has no areas.</summary>
    /// <param name="size">Of the deck.</param>
    /// <param name="height">Of its top; the default is unknown.</param>
    /// <param name="hasDeck">False where there is no stage at all, so that everything stands on the floor.</param>
    public Ground(Given<Size> size, Given<HeightFrom> height = default, bool hasDeck = true)
    {
        (this.size, this.height, HasDeck) = (size, height, hasDeck);
        Outline = size.Is(out var known) && known.Width.Meters > 0 && known.Depth.Meters > 0 ? new Outline(known.Width.Meters, known.Depth.Meters) : null;
    }

    /// <summary>Whether there is a stage.</summary>
    public bool HasDeck { get; }

    /// <summary>The outline of the deck; null where there is none, or its size is unknown.</summary>
    public Outline? Outline { get; }

    /// <summary>The top of the deck above the floor; unknown where that is open, or measured from something else.</summary>
    public Figure<Length> DeckHeight => HeightOf(height);

    /// <summary>All names that a place may be said by, in ordinal order.</summary>
    public IEnumerable<string> Names => places.Keys.Order(StringComparer.Ordinal);

    /// <summary>A height above the floor; unknown where it is open, or measured from something else.</summary>
    public static Figure<Length> HeightOf(Given<HeightFrom> height)
    {
        var isFromFloor = height.Is(out var known) && known.Above is null or HeightFrom.Floor;
        return new Figure<Length>(isFromFloor ? known.Height : null, Doubts.Of(height.Doubt), new Reason.Fixed(height.At, height.How));
    }

    /// <summary>Remembers where a named thing stands, so that others may stand at it; the first thing of a name keeps it.</summary>
    public void Name(string name, Given<Place> place, Side? side = null) => places.TryAdd(name, (place, side));

    /// <summary>What a spot lies on.</summary>
    public Footing On(Spot? spot) => (spot, Outline, HasDeck) switch
    {
        (null, _, _) => Footing.Unknown,
        (_, _, false) => Footing.Floor,
        (_, null, _) => Footing.Unknown,
        ({ } at, { } outline, _) => outline.Holds(at) ? Footing.Deck : Footing.Floor,
    };

    /// <summary>How high above the floor something starts that stands there.</summary>
    public Figure<Length> HeightAt(Spot? spot) => On(spot) switch
    {
        Footing.Deck => DeckHeight,
        Footing.Floor => new Figure<Length>(Length.Zero, Doubts.Of(size.Doubt), Reason.Derived.It),
        _ => new Figure<Length>(null, Doubts.Of(size.Doubt), Reason.Derived.It),
    };

    /// <summary>The spot, or null where the place is unknown, or said from something that is nowhere.</summary>
    /// <param name="place">As it was said.</param>
    /// <param name="side">The side of a mirrored thing, for <c>off centre</c>.</param>
    public Spot? Find(Given<Place>? place, Side? side = null) =>
        place is { } given && given.Is(out var known) && Find(known, side) is { } spot && IsNear(spot) ? spot : null;

    /// <summary>The name of a thing that a place was said by and that nobody placed; null where every name is known.</summary>
    public string? Unknown(Place place)
    {
        var seen = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        for (var name = NameIn(place); name is not null && seen.Add(name);)
        {
            if (!places.TryGetValue(name, out var known))
            {
                return name;
            }

            name = known.Place.Is(out var next) ? NameIn(next) : null;
        }

        return null;
    }

    /// <summary>The named things that stand at each other in a circle that this one is in, from this one on; empty where it is in none.</summary>
    public IReadOnlyList<string> Circle(string name)
    {
        var around = new List<string>();
        for (var at = name; !around.Contains(at, StringComparer.OrdinalIgnoreCase);)
        {
            around.Add(at);
            if (!places.TryGetValue(at, out var known) || !known.Place.Is(out var place) || NameIn(place) is not { } next)
            {
                return [];
            }

            if (string.Equals(next, name, StringComparison.OrdinalIgnoreCase))
            {
                return around;
            }

            at = next;
        }

        return [];
    }

    private static string? NameIn(Place place) => place switch
    {
        Place.AtThing thing => thing.Name,
        Place.Measured measured => measured.Of,
        _ => null,
    };

    private Spot? Find(Place place, Side? side) => place switch
    {
        Place.Centre => new Spot(0, (Outline?.Depth ?? 0) / 2),
        Place.AtPoint point => Spot.Of(point.X, point.Y),
        Place.AtThing thing => Named(thing.Name),
        Place.AtArea area => Outline is { } outline ? Middle(area.Area, outline) : null,
        Place.Measured measured => Origin(measured.Of) is { } origin ? origin.Plus(Sideways(measured, side), measured.Upstage.Meters) : null,
        _ => null,
    };

    private Spot? Origin(string? thing) => thing is null ? new Spot(0, 0) : Named(thing);

    // A thing that stands at a thing that stands at the first is nowhere.
    private Spot? Named(string name)
    {
        // Several threads may ask at once.
        lock (beingFound)
        {
            if (!places.TryGetValue(name, out var known) || !beingFound.Add(name))
            {
                return null;
            }

            var spot = Find(known.Place, known.Side);
            beingFound.Remove(name);
            return spot;
        }
    }

    private static double Sideways(Place.Measured place, Side? side) =>
        (place.Side ?? side) == Side.StageRight ? -place.Sideways.Meters : place.Sideways.Meters;

    // The nine areas are thirds of the deck; their names run from stage right to stage left, downstage first.
    private static Spot Middle(StageArea area, Outline outline)
    {
        var (row, column) = Math.DivRem((int)area, 3);
        return new Spot((column - 1) * outline.Width / 3, ((row * 2) + 1) * outline.Depth / 6);
    }

    private static bool IsNear(Spot spot) => Math.Abs(spot.X) <= Furthest && Math.Abs(spot.Y) <= Furthest;
}
