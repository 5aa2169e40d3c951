using Advance.Domain.Facts;
using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>How full one row of ports of a stage box is, when the fullest act plays.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="Box">The box.</param>
/// <param name="Kind">Inputs or outputs.</param>
/// <param name="Used">Ports in use.</param>
/// <param name="Ports">Ports there are.</param>
/// <param name="WantedFree">Ports that a policy wants left over.</param>
public sealed record BoxUse(Address Address, string Box, PortKind Kind, Figure<int> Used, Figure<int> Ports, Figure<int> WantedFree)
{
    /// <summary>Its numbers, each under its address.</summary>
    public IReadOnlyList<Stated> Figures =>
    [
        Stated.Of(Address / "ports", $"{Box}, ports", Ports),
        Stated.Of(Address / "used", $"{Box}, ports used", Used),
        Stated.Of(Address / "kept-free", $"{Box}, ports to keep free", WantedFree),
    ];
}
