namespace Advance.Sheets.Views;

/// <summary>Every run, in the order in which it is laid.</summary>
public sealed record CableSheetView
{
    /// <summary>Feeders first, microphone leads last; of one kind, those between the same connectors together.</summary>
    public required IReadOnlyList<Group> Groups { get; init; }

    /// <summary>Named ways, and how they are laid.</summary>
    public required IReadOnlyList<PairView> Ways { get; init; }

    /// <summary>What the shop must have ready.</summary>
    public required IReadOnlyList<KindLine> Kinds { get; init; }

    /// <summary>What the rules have to say about cables.</summary>
    public required IReadOnlyList<FindingView> Findings { get; init; }

    /// <summary>Whether any kind is short.</summary>
    public required bool HasShort { get; init; }

    /// <summary>Whether places are in metres, and so without their unit.</summary>
    public required bool IsMetric { get; init; }

    /// <summary>Of all lengths.</summary>
    public required string Unit { get; init; }

    /// <summary>The open questions behind the choice of leads; blank where there are none.</summary>
    public required Cell RestsOn { get; init; }

    /// <summary>Runs of one kind between the same connectors.</summary>
    /// <param name="Name"><c>Mains, 16 A blue to locking mains 20 A</c>.</param>
    /// <param name="Runs">In the order of their labels.</param>
    public sealed record Group(string Name, IReadOnlyList<Line> Runs);

    /// <summary>One run.</summary>
    /// <param name="Label">As on the leads.</param>
    /// <param name="From">Where it starts.</param>
    /// <param name="FromPlace">Where that stands; blank for a box that stands on the sheet once.</param>
    /// <param name="To">Where it goes.</param>
    /// <param name="ToPlace">Where that stands.</param>
    /// <param name="Route">The loom it is part of, and what it lies along.</param>
    /// <param name="Need">How long it must be.</param>
    /// <param name="Take">The lengths of its leads, from the source on; each + is a join.</param>
    /// <param name="LeftOver">How much is left over, and at which end it is coiled.</param>
    /// <param name="Note">What is wrong or out of the ordinary with it.</param>
    public sealed record Line(
        Cell Label, Cell From, Cell FromPlace, Cell To, Cell ToPlace, Cell Route, Cell Need, Cell Take, Cell LeftOver, Cell Note)
    {
        /// <summary>Whether its way is more than the straight line between its ends.</summary>
        public bool IsBent => Route.Text != "straight";
    }

    /// <summary>One kind of lead.</summary>
    /// <param name="Kind">Name on the shelf label.</param>
    /// <param name="Length">How long it is.</param>
    /// <param name="Need">In use.</param>
    /// <param name="Spare">More.</param>
    /// <param name="Total">To take along.</param>
    /// <param name="Ready">Owned and not out for repair.</param>
    /// <param name="Short">Missing.</param>
    public sealed record KindLine(Cell Kind, Cell Length, Cell Need, Cell Spare, Cell Total, Cell Ready, Cell Short);
}
