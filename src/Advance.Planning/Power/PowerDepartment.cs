using Advance.Domain.Gigs;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Places distributions.</summary>
public static class PowerDepartment
{
    private const string Name = "power";

    /// <summary>Places them all.</summary>
    public static PowerPlan Place(Gig gig, Stock stock, Ground ground)
    {
        var pieces = new Pieces(Name, stock);
        var drawn = new Drawn(ground);
        foreach (var device in gig.Power.Distributions)
        {
            var piece = pieces.Ask(
                pieces.At(device.Name), device.Name, device.Item.Or("TBC"), device.From, ground.Find(device.Place), device.At);
            drawn.Add(piece.Address, device.Name, Look.Box, device.Place, Footprint.Of(piece.Kind));
        }

        return new PowerPlan(pieces.Made, drawn.Things);
    }
}
