using Advance.Domain.Facts;
using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>From one act to the next.</summary>
/// <param name="Address">Its name in the plan: <c>schedule/changeover/Marl and Daughters</c>.</param>
/// <param name="From">The act that leaves.</param>
/// <param name="To">The act that comes.</param>
/// <param name="Start">When the one ends.</param>
/// <param name="Gap">Until the other starts.</param>
/// <param name="Lines">Lines that are patched anew.</param>
/// <param name="Needed">How long it takes by policy.</param>
/// <param name="Allowed">The share of the gap that policy allows.</param>
/// <param name="At">Where the next set was written.</param>
public sealed record Changeover(
    Address Address, string From, string To, Moment Start, Figure<Duration> Gap, int Lines, Figure<Duration> Needed, Figure<Duration> Allowed, Mark At)
{
    /// <summary>Its numbers, each under its address.</summary>
    public IReadOnlyList<Stated> Figures =>
    [
        Stated.Of(Address / "gap", $"from {From} to {To}, time there is", Gap),
        Stated.Of(Address / "needed", $"from {From} to {To}, time it takes", Needed),
        Stated.Of(Address / "allowed", $"from {From} to {To}, time it may take", Allowed),
    ];
}
