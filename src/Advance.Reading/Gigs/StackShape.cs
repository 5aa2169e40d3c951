using Advance.Domain.Gigs;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>Boxes standing on each other.</summary>
internal static class StackShape
{
    public static readonly RecordShape<Stack> It = new("stack", "Loudspeakers standing on each other from the floor up.", keys =>
    {
        var sides = keys.Optional("sides", Written.Sides, "SR SL makes a mirrored pair; without it there is one stack.");
        var place = keys.Asked("place", Written.Place, "Where it stands; of a pair, each one.");
        var aim = keys.Open("aim", Written.Aim, "Which way it faces; without it as the company says.");
        var boxes = keys.Needed("from-floor-up", Written.List(Written.Counted), "The boxes, lowest first.");
        var fedBy = keys.Open("fed-by", Written.Ports, "What drives it: a port for each side, in the order of the sides.");
        var crossover = keys.Open("crossover", Written.Crossover, "Where lows and highs are parted, and in what.");
        return row => new Stack(row.Name, sides(row), place(row), aim(row), boxes(row), fedBy(row), crossover(row), row.At);
    });
}
