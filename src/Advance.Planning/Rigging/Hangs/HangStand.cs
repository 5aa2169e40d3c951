using System.Globalization;
using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Gives hangs what holds them: hoists and what is between frame and point.</summary>
internal sealed class HangStand(Pieces pieces, Ground ground)
{
    /// <summary>The hang, or the two of a mirrored pair.</summary>
    public IEnumerable<PlacedHang> Place(Stack hang) => Mirrored.Each(hang.Name, hang.Sides).Select(one =>
    {
        var spot = ground.Find(hang.Place, one.Side);
        return new PlacedHang(pieces.At(one.Name), one.Name, hang, one.Side, [.. hang.Flown!.Picks.Select((pick, index) => PickOf(one, pick, index + 1, spot))]);
    });

    private PlacedPick PickOf(Mirrored one, HangPick pick, int number, Spot? spot)
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"{one.Name}-{number}");
        var at = pieces.At(one.Name) / "pick" / number;
        var hoist = pick.Hoist is { } asked ? pieces.Ask(at / "hoist", $"hoist {name}", asked.Or("TBC"), from: null, spot, pick.At) : null;
        var gear = pick.Gear.SelectMany(item => Enumerable.Range(0, item.Count).Select(_ => pieces.Ask(at / item.Item, $"{item.Item} of {name}", item.Item, from: null, spot, pick.At)));
        var held = new Pick(default(Given<Length>), pick.Hoist, PointOf(pick, one.Index), pick.Gear, pick.At) { BodyUp = pick.BodyUp, Group = pick.Group };
        return new PlacedPick(at, name, held, hoist, [.. gear]);
    }

    // The first for the first side, the second for its twin; one alone for both, such as a truss.
    private static Given<string> PointOf(HangPick pick, int side)
    {
        if (!pick.Points.Is(out var points))
        {
            return Given.Unknown<string>(pick.Points.At, pick.Points.Doubt ?? new Doubt("points", pick.At, LeftOut: true));
        }

        var index = points.Count == 1 ? 0 : side;
        return index < points.Count ? points[index] : Given.Unknown<string>(pick.At, new Doubt("points", pick.At, LeftOut: true));
    }
}
