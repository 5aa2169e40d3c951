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
        Devices.Stand(gig.Power.Distributions, pieces, drawn);
        return new PowerPlan(pieces.Made, drawn.Things);
    }
}
