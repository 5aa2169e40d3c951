using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>One run that leads are picked for.</summary>
/// <param name="Address">Its name in the plan; ties are broken by it.</param>
/// <param name="Chains">What could lead from one of its sockets to the other.</param>
/// <param name="Needed">In millimetres, rounded up.</param>
/// <param name="MostJoins">By policy.</param>
/// <param name="Own">Id of a lead that comes along with the unit and costs nothing; null where none does.</param>
/// <param name="Earlier">What it was made of in the last issue; null for a first one.</param>
internal sealed record LeadWish(Address Address, LeadChains Chains, long Needed, int MostJoins, string? Own, string? Earlier)
{
    /// <summary>The earlier chain, if it still reaches.</summary>
    public LeadChain? Kept { get; } = Earlier is null ? null : Chains.Written(Earlier, Needed);

    /// <summary>What it would be made of if it were alone: what it was, else the best; null where nothing reaches.</summary>
    public LeadChain? Preferred => Kept ?? (Chains.Reaching(Needed) is [var best, ..] ? best : null);

    /// <summary>What wishes have in common that the same chains make.</summary>
    public (LeadChains, int, int, string?) Class => (Chains, Chains.Step(Needed), MostJoins, Own);
}
