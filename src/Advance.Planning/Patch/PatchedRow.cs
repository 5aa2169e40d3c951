using Advance.Domain.Facts;
using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>A line or a mix, for rules that hold for both alike.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="Words">Its channel or mix and what it is, for findings.</param>
/// <param name="Number">Its channel or mix.</param>
/// <param name="Index">Which of its row it is, from 0.</param>
/// <param name="Count">How many are patched together in its row.</param>
/// <param name="Port">What it was given; null for none.</param>
/// <param name="Written">What was fixed by hand for its row.</param>
/// <param name="At">Where it was written.</param>
internal sealed record PatchedRow(
    Address Address, string Words, int Number, int Index, int Count, Port? Port, Given<PortRange>? Written, Mark At)
{
    /// <summary>A line.</summary>
    public PatchedRow(PatchLine line)
        : this(
            line.Address,
            $"Channel {line.Channel} ({line.Source})",
            line.Channel,
            line.Channel - line.Row.Channels.First,
            line.Row.Channels.Count,
            line.Port,
            line.Row.Port,
            line.Row.At) => Kind = PortKind.Input;

    /// <summary>A mix.</summary>
    public PatchedRow(PatchReturn mix)
        : this(mix.Address, $"Mix {mix.Number} ({mix.Row.For})", mix.Number, mix.Half, mix.Row.Numbers.Count, mix.Port, mix.Row.Port, mix.Row.At) => Kind = PortKind.Output;

    /// <summary>Which way it goes.</summary>
    public PortKind Kind { get; } = PortKind.Input;

    /// <summary>What was fixed by hand; null where nothing was.</summary>
    public PortRange? Fixed => Written is { } given && given.Is(out var range) ? range : null;

    /// <summary>The port that was fixed for it; null where nothing was.</summary>
    public Port? Wanted => Fixed is { } range ? new Port(range.Device, range.Kind ?? Kind, range.Numbers?.First + Index) : null;

    /// <summary>The open questions about what was fixed.</summary>
    public Doubts RestsOn => Doubts.Of(Written?.Doubt);
}
