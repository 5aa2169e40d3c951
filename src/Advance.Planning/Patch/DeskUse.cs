using Advance.Domain.Facts;
using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>How far up a desk its channels and mixes go, when the longest list is up.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="Desk">The desk.</param>
/// <param name="At">Where it was written.</param>
/// <param name="Channels">Channels it has; unknown where no stock says.</param>
/// <param name="TopChannel">The highest channel of any list; 0 where there is none.</param>
/// <param name="Buses">Mixes it can send; unknown where no stock says.</param>
/// <param name="TopMix">The highest mix of any act; 0 where there is none.</param>
public sealed record DeskUse(
    Address Address, string Desk, Mark At, Figure<int> Channels, Figure<int> TopChannel, Figure<int> Buses, Figure<int> TopMix)
{
    /// <summary>Its numbers, each under its address.</summary>
    public IReadOnlyList<Stated> Figures =>
    [
        Stated.Of(Address / "channels", $"{Desk}, channels", Channels),
        Stated.Of(Address / "top-channel", $"{Desk}, highest channel in use", TopChannel),
        Stated.Of(Address / "buses", $"{Desk}, mixes it can send", Buses),
        Stated.Of(Address / "top-mix", $"{Desk}, highest mix in use", TopMix),
    ];
}
