using Advance.Domain.Companies;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Places lighting stands, fixtures and their desk, and gives each fixture its address.</summary>
public static class LightingDepartment
{
    private const string Name = "lighting";

    /// <summary>Places it all.</summary>
    public static LightingPlacement Place(Gig gig, Stock stock, Ground ground)
    {
        var pieces = new Pieces(Name, stock);
        var drawn = new Drawn(ground);
        if (gig.Lighting.Control is { } desk)
        {
            pieces.Ask(pieces.At("control"), desk.Name, desk.Item.Or("TBC"), desk.From, ground.Find(desk.Place), desk.At);
        }

        foreach (var position in gig.Lighting.Positions)
        {
            Stand(position, pieces, drawn);
        }

        foreach (var row in gig.Lighting.Fixtures)
        {
            for (var number = row.Numbers.First; number <= row.Numbers.Last; number++)
            {
                var address = pieces.At("fixture") / number;
                pieces.Ask(address, $"Fixture {number}, {row.Position}", row.Item.Or("TBC"), from: null, spot: null, row.At);
            }
        }

        return new LightingPlacement(pieces.Made, drawn.Things);
    }

    /// <summary>Chooses addresses and lines.</summary>
    public static LightingPlan Choose(Gig gig, Stock stock, Policies policies, LightingPlacement placed, Choices earlier)
    {
        _ = (gig, stock, policies, earlier);
        return new LightingPlan(placed.Pieces, placed.Things, [], [], Choices.None);
    }

    private static void Stand(Position position, Pieces pieces, Drawn drawn)
    {
        foreach (var (name, side, _) in Mirrored.Each(position.Name, position.Sides))
        {
            var address = pieces.At(name);
            drawn.Add(address, name, Look.LightStand, position.Place, Footprint.Usual, side: side);
            if (position.Item is { } item)
            {
                pieces.Ask(address, name, item.Or("TBC"), from: null, drawn.Find(position.Place, side), position.At);
            }
        }
    }
}
