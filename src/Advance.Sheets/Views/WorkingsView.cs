namespace Advance.Sheets.Views;

/// <summary>Each figure that safety may rest on: formula, what was put in, what came out, where the formula stands.</summary>
/// <param name="Groups">By what is worked out, and how.</param>
public sealed record WorkingsView(IReadOnlyList<WorkingsView.Group> Groups)
{
    /// <summary>Whether the paper speaks the units that workings are in.</summary>
    public required bool IsMetric { get; init; }

    /// <summary>Figures that are worked out alike.</summary>
    /// <param name="Kind">What is worked out.</param>
    /// <param name="Formula">In symbols.</param>
    /// <param name="Symbols">What each symbol that is put in stands for.</param>
    /// <param name="Source">With its edition.</param>
    /// <param name="Lines">The figures.</param>
    public sealed record Group(Cell Kind, Cell Formula, Cell Symbols, Cell Source, IReadOnlyList<Line> Lines)
    {
        /// <summary>What is put in alike for each of several figures; not repeated in their rows.</summary>
        public IReadOnlyList<Put> InEach { get; init; } = [];

        /// <summary>What the addresses of all lines share, with … for what is each line's own; blank where they share nothing.</summary>
        public Cell SharedAddress { get; init; } = Cell.Blank;
    }

    /// <summary>One value that was put in.</summary>
    /// <param name="Said">Symbol, value, and where it was written down.</param>
    /// <param name="Behind">What was put into it in turn; blank where it has a row of its own, and where a row above says so.</param>
    public sealed record Put(Cell Said, Cell Behind);

    /// <summary>One figure, or several alike.</summary>
    /// <param name="Address">To ask for it: <c>advance explain</c>.</param>
    /// <param name="Of">What it is the figure of, or all that come out alike.</param>
    /// <param name="Remark">As the state of the show in which it is worst.</param>
    /// <param name="Inputs">Each with its value and where it came from, one after the other.</param>
    /// <param name="Result">In units of the SI.</param>
    public sealed record Line(Cell Address, Cell Of, Cell Remark, IReadOnlyList<Put> Inputs, Cell Result)
    {
        /// <summary>What stands in its address where that of its group has …; blank where its name tells.</summary>
        public Cell OwnAddress { get; init; } = Cell.Blank;

        /// <summary>The figure above it that the same was put into; blank where it is the first.</summary>
        public Cell Like { get; init; } = Cell.Blank;

        /// <summary>The result in the units of the paper; blank where that is no other.</summary>
        public Cell OnPaper { get; init; } = Cell.Blank;
    }
}
