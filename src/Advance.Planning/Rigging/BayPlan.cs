using Advance.Domain.Figures;
using Advance.Domain.Venues;
using UnitsNet;

namespace Advance.Planning;

/// <summary>A bay of the roof with all that hangs in it, ours and that of others, at rest.</summary>
/// <param name="Bay">The venue's.</param>
/// <param name="Points">Its points that something hangs on.</param>
/// <param name="All">All that hangs in it.</param>
public sealed record BayPlan(RoofBay Bay, IReadOnlyList<PointPlan> Points, Figure<Mass> All)
{
    /// <summary>What it may carry.</summary>
    public Figure<Mass> Limit => Figure.From(Bay.Limit);

    /// <summary>Its name in the plan.</summary>
    public Address Address => Address.Of("rigging") / "bay" / Bay.Name;

    /// <summary>Its numbers.</summary>
    internal IEnumerable<Stated> Figures => [Stated.Of(Address / "all", $"{Bay.Name}, all that hangs in it", All)];
}
