namespace Advance.Sheets.Views;

/// <summary>Each figure that safety may rest on: formula, what was put in, what came out, where the formula stands.</summary>
/// <param name="Groups">By subject.</param>
public sealed record WorkingsView(IReadOnlyList<WorkingsView.Group> Groups)
{
    /// <summary>Figures of one subject.</summary>
    public sealed record Group(string Name, IReadOnlyList<Line> Lines);

    /// <summary>One figure.</summary>
    /// <param name="Address">To ask for it: <c>advance explain</c>.</param>
    /// <param name="What">In words.</param>
    /// <param name="Formula">In symbols.</param>
    /// <param name="Inputs">Each with its value and where it came from, one after the other.</param>
    /// <param name="Result">In units of the SI.</param>
    /// <param name="Source">With its edition.</param>
    public sealed record Line(Cell Address, Cell What, Cell Formula, IReadOnlyList<Cell> Inputs, Cell Result, Cell Source);
}
