using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>What hangs on one outlet: one load, or several that hand the mains on from one to the next.</summary>
/// <param name="Address">Of the stack, the lighting position or the load: what was chosen for it is remembered under it.</param>
/// <param name="Name">On paper.</param>
/// <param name="Loads">From the outlet on, at least one.</param>
/// <param name="Row">The circuit fixed by hand that feeds it; null where it is free.</param>
public sealed record PowerChain(Address Address, string Name, IReadOnlyList<PowerLoad> Loads, CircuitRow? Row)
{
    /// <summary>The first load, whose inlet and supply count.</summary>
    public PowerLoad First => Loads[0];

    /// <summary>Where it was asked for.</summary>
    public Mark At => First.At;
}
