using Advance.Domain.Companies;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Finds each link its way and picks its leads from what the shop owns.</summary>
public static class CableDepartment
{
    /// <summary>Chooses leads for all links at once.</summary>
    /// <param name="links">Everything that must be connected.</param>
    /// <param name="gig">As written.</param>
    /// <param name="stock">What there is.</param>
    /// <param name="policies">Slack, trims, joins.</param>
    /// <param name="routes">The ways.</param>
    /// <param name="earlier">What was chosen for the last issue.</param>
    public static CablePlan Choose(
        IReadOnlyList<Link> links, Gig gig, Stock stock, Policies policies, Routes routes, Choices earlier)
    {
        _ = (links, gig, stock, policies, routes, earlier);
        return CablePlan.None;
    }
}
