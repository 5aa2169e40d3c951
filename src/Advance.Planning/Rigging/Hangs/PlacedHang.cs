using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Places;

namespace Advance.Planning;

/// <summary>What holds a hang, before anybody knows what that carries.</summary>
/// <param name="Address">Its name in the plan: <c>rigging/Main SR</c>.</param>
/// <param name="Name">Its name on paper.</param>
/// <param name="Hang">As written.</param>
/// <param name="Side">Which side it is on; null for a hang without sides.</param>
/// <param name="Picks">In the order written.</param>
public sealed record PlacedHang(Address Address, string Name, Stack Hang, Side? Side, IReadOnlyList<PlacedPick> Picks)
{
    /// <summary>How it is flown, as written.</summary>
    public Flown Flown => Hang.Flown!;

    /// <summary>What was written of a pick.</summary>
    public HangPick Written(int pick) => Flown.Picks[pick];
}
