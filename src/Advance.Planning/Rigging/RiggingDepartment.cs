using Advance.Domain.Gigs;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Hangs trusses, and works out what that asks of hoists, points and the roof.</summary>
public static class RiggingDepartment
{
    private const string Name = "rigging";

    /// <summary>Places it all.</summary>
    public static RiggingPlacement Place(Gig gig, Stock stock, Ground ground)
    {
        var pieces = new Pieces(Name, stock);
        var drawn = new Drawn(ground);
        var stand = new TrussStand(pieces, drawn, stock);
        var trusses = gig.Rigging.Trusses.Select(stand.Place).ToList();
        return new RiggingPlacement(pieces.Made, drawn.Things, trusses);
    }
}
