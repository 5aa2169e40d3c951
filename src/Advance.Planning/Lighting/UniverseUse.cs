using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>How full a universe of lighting control is.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="Universe">Its number.</param>
/// <param name="Used">Slots that fixtures listen to; unknown where the mode of one is.</param>
/// <param name="KeptFree">Slots that a policy wants left over.</param>
public sealed record UniverseUse(Address Address, int Universe, Figure<int> Used, Figure<int> KeptFree)
{
    /// <summary>Its numbers, each under its address.</summary>
    public IReadOnlyList<Stated> Figures =>
    [
        Stated.Of(Address / "slots", $"universe {Universe}, slots used", Used),
        Stated.Of(Address / "kept-free", $"universe {Universe}, slots to keep free", KeptFree),
    ];
}
