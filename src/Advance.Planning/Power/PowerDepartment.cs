using Advance.Domain;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Places distributions, gives every load its outlet, and adds up what they carry.</summary>
public static class PowerDepartment
{
    private const string Name = "power";

    /// <summary>Places the distributions.</summary>
    public static PowerPlacement Place(Gig gig, Stock stock, Ground ground)
    {
        var pieces = new Pieces(Name, stock);
        var drawn = new Drawn(ground);
        Devices.Stand(gig.Power.Distributions, pieces, drawn);
        return new PowerPlacement(pieces.Made, drawn.Things);
    }

    /// <summary>Chooses an outlet for every load.</summary>
    /// <param name="brief">As written.</param>
    /// <param name="placed">The distributions.</param>
    /// <param name="pieces">Everything that may need mains.</param>
    /// <param name="ground">Where places are found.</param>
    /// <param name="routes">The ways, for the length of feeders.</param>
    /// <param name="earlier">What was chosen for the last issue.</param>
    public static PowerPlan Choose(
        Brief brief, PowerPlacement placed, IReadOnlyList<Piece> pieces, Ground ground, Routes routes, Choices earlier)
    {
        _ = (brief, pieces, ground, routes, earlier);
        return new PowerPlan(placed.Pieces, placed.Things, [], [], Choices.None);
    }

    /// <summary>Works out voltage drop on the leads as picked.</summary>
    public static VoltagePlan Settle(Brief brief, PowerPlan power, CablePlan cables)
    {
        _ = (brief, power, cables);
        return new VoltagePlan([]);
    }
}
