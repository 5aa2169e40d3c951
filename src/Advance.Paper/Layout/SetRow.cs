using Advance.Paper.Setting;
using Advance.Paper.Tree;

namespace Advance.Paper.Layout;

/// <summary>A row with its text composed.</summary>
/// <param name="Row">As the tree has it.</param>
/// <param name="Cells">From left to right.</param>
internal sealed record SetRow(Row Row, List<SetCell> Cells)
{
    /// <summary>How far a cell's text is set in: a companion's first words are.</summary>
    public int Indent(SetCell cell, TypeScale scale)
    {
        if (Row.Kind != RowKind.Sub)
        {
            return 0;
        }

        foreach (var other in Cells)
        {
            if (other.Align == Align.Left && other.Text.HasWords)
            {
                return ReferenceEquals(other, cell) ? scale.Body : 0;
            }
        }

        return 0;
    }
}
