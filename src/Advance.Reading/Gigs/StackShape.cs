using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>Boxes standing on each other, or hanging from each other.</summary>
internal static class StackShape
{
    public static readonly RecordShape<Stack> It = new("stack", "Loudspeakers standing on each other from the floor up.", keys =>
    {
        var sides = keys.Optional("sides", Written.Sides, "SR SL makes a mirrored pair; without it there is one stack.");
        var place = keys.Asked("place", Written.Place, "Where it stands; of a pair, each one.");
        var aim = keys.Open("aim", Written.Aim, "Which way it faces; without it as the company says.");
        var boxes = keys.Needed("from-floor-up", Written.List(Written.Counted), "The boxes, lowest first.");
        var drive = Drive(keys, "stack");
        var strap = keys.Optional("strap", Written.Counted, "What straps each stack together.");
        var ballast = keys.Any("ballast", Written.Table(BallastShape.It), "What keeps each stack from tipping or sliding in wind.");
        var pad = keys.Open("pad", Written.Size, "What each stack stands on that spreads its load, such as trackway or a ground sheet of wood.");
        var friction = keys.Open("friction", Written.Factor, "Between its lowest box and what it stands on, wet, where that is not the site's.");
        return row => drive(row, sides(row), place(row), aim(row), boxes(row)) with { Strap = strap(row), Ballast = ballast(row), Pad = pad(row), Friction = friction(row) };
    });

    /// <summary>Boxes flown under a frame: driven like a stack, and held like a truss.</summary>
    public static readonly RecordShape<Stack> OfHang = new("hang", "Loudspeakers flown under a frame, from the top down.", keys =>
    {
        var sides = keys.Optional("sides", Written.Sides, "SR SL makes a mirrored pair; without it there is one hang.");
        var place = keys.Asked("place", Written.Place, "Of the hole that it hangs by, of two the middle between them, seen from above; of a pair, each one.");
        var aim = keys.Open("aim", Written.Aim, "Which way it faces; without it as the company says.");
        var boxes = keys.Needed("from-top-down", Written.List(Written.Counted), "Its frame first, then the boxes, highest first.");
        var flown = HangShape.Keys(keys);
        var drive = Drive(keys, "hang");
        return row => drive(row, sides(row), place(row), aim(row), boxes(row)) with { Flown = flown(row) };
    });

    private static Func<Row, Sides?, Given<Place>, Given<Aim>?, IReadOnlyList<CountedItem>, Stack> Drive(Keys keys, string word)
    {
        var fedBy = keys.Open("fed-by", Written.Ports, "What drives it: a port for each side, in the order of the sides.");
        var crossover = keys.Open("crossover", Written.Crossover, "Where lows and highs are parted, and in what.");
        var topsFedBy = keys.Open("tops-fed-by", Written.Ports, "What drives its tops, where they have outputs of their own.");
        var rearFedBy = keys.Open("rear-fed-by", Written.Ports, "What drives its rear-facing boxes, where they have outputs of their own.");
        var electronicAim = keys.Open("electronic-aim", Written.Angle, "Set on each box that has it, up from its own axis; without it straight.");
        var delay = keys.Open("delay", Written.Duration, "Fixed by hand; without it worked out.");
        var fillOf = keys.Open("fill-of", Written.Name, "The stack or hang that it fills in for, near the stage.");
        var delayOf = keys.Open("delay-of", Written.Name, "The stack or hang that it takes over from, further out.");
        keys.AtMostOneOf("fill-of", "delay-of");
        var heardAt = keys.Open("heard-at", Written.Place, $"Where a fill or a delay {word} arrives together with what comes before it; without it where it is.");
        return (row, sides, place, aim, boxes) => new Stack(row.Name, sides, place, aim, boxes, fedBy(row), crossover(row), row.At)
        {
            TopsFedBy = topsFedBy(row),
            RearFedBy = rearFedBy(row),
            ElectronicAim = electronicAim(row),
            Delay = delay(row),
            FillOf = fillOf(row),
            DelayOf = delayOf(row),
            HeardAt = heardAt(row),
        };
    }
}
