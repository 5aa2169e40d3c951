using Advance.Domain.Facts;
using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Something drawn in plan view.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="Name">Its name on paper.</param>
/// <param name="Look">What it looks like.</param>
/// <param name="Spot">Its middle.</param>
/// <param name="Covers">What it covers on the floor.</param>
/// <param name="Turn">Degrees clockwise, seen from above with the audience at the foot of the page.</param>
/// <param name="Act">The act whose it is; null for what stands there all day.</param>
/// <param name="RestsOn">The open questions about where it is.</param>
public sealed record Placed(
    Address Address, string Name, Look Look, Spot Spot, Footprint Covers, double Turn, string? Act, Doubts RestsOn)
{
    /// <summary>What it stands on.</summary>
    public Footing On { get; init; }

    /// <summary>How high above the floor it starts.</summary>
    public Figure<Length> Base { get; init; } = new(null, Doubts.None, Reason.Derived.It);

    /// <summary>Where its place was written.</summary>
    public Mark At { get; init; }
}
