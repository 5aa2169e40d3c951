using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary>One fixture: where it is, how it is set, and where it listens.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="Number">Its number on the desk.</param>
/// <param name="Row">As written; the fixtures of a row share it.</param>
/// <param name="Piece">The fixture itself.</param>
/// <param name="Position">What carries it; null where no position has that name.</param>
/// <param name="Spot">Where it is; null where nobody knows.</param>
public sealed record FixturePlan(Address Address, int Number, FixtureRow Row, Piece Piece, LightingPosition? Position, Spot? Spot)
{
    /// <summary>What runs to it and through it.</summary>
    public const string Signal = "lighting-control";

    /// <summary>Universe and first slot; null where it has none.</summary>
    public ControlAddress? At { get; init; }

    /// <summary>Whether its address was fixed by hand.</summary>
    public Reason Why { get; init; } = Reason.Derived.It;

    /// <summary>Its name as the end of a link.</summary>
    public string Name => $"Fixture {Number}";

    /// <summary>Which of its row it is, from 0.</summary>
    public int Index => Number - Row.Numbers.First;

    /// <summary>How it is set: the mode that was written, or the only one it has; null where that is not known.</summary>
    public ModeRow? Mode => Row.Mode.Length > 0
        ? Modes.FirstOrDefault(mode => mode.Name == Row.Mode)
        : Modes.Count == 1 ? Modes[0] : null;

    /// <summary>The slots it listens to; null where it has no address or its mode is not known.</summary>
    public SlotRange? Slots => At is { } at && Mode is { } mode ? new SlotRange(at.Slot, mode.Slots) : null;

    /// <summary>How high it hangs above what is below it, in metres; 0 where nobody knows, and then leads do not find it.</summary>
    public double Height => Position?.Height.Value?.Meters ?? 0;

    /// <summary>Where leads go to; null also where nobody knows how high it hangs, for a lead that is cut to the floor would be too short.</summary>
    public Spot? LeadSpot => Position?.Height.Value is null ? null : Spot;

    /// <summary>Whether lighting control plugs into it.</summary>
    public bool IsWired => Input is not null;

    /// <summary>What plugs into its control input; null where it has none or no stock says.</summary>
    public string? Input => Connector(PortKind.Input);

    /// <summary>What plugs into the connector that hands control on; null where it has none or no stock says.</summary>
    public string? Link => Connector(PortKind.Link);

    /// <summary>The modes of its kind; empty where no stock says.</summary>
    public IReadOnlyList<ModeRow> Modes => Piece.Kind?.Modes ?? [];

    /// <summary>The open questions about it.</summary>
    public Doubts RestsOn => Doubts.Of(Row.Item.Doubt).With(Doubts.Of(Row.Address?.Doubt)).With(Position?.RestsOn ?? Doubts.None);

    /// <summary>The open questions about what it listens to.</summary>
    public Doubts ControlDoubts => Doubts.Of(Row.Item.Doubt).With(Doubts.Of(Row.Address?.Doubt));

    private string? Connector(PortKind kind) => Piece.Kind?.Ports.FirstOrDefault(row => row.Port == kind && row.Signal == Signal)?.Connector;
}
