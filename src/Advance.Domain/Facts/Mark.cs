namespace Advance.Domain.Facts;

/// <summary>A place in a file that somebody wrote: where a value, a finding or a choice comes from.</summary>
/// <param name="File">Path relative to the folder that holds the gig's tree, with forward slashes; empty for <see cref="Nowhere"/>.</param>
/// <param name="Line">Line, counted from 1 (in a workbook, the row).</param>
/// <param name="Column">Column in UTF-16 units, counted from 1 (in a workbook, the column of cells).</param>
/// <param name="Length">How many units the caret underlines, at least 1.</param>
public readonly record struct Mark(string File, int Line, int Column, int Length = 1) : IComparable<Mark>
{
    /// <summary>The mark of what nobody wrote: a policy's default, a derived thing.</summary>
    public static readonly Mark Nowhere = new("", 0, 0, 0);

    /// <summary>False for <see cref="Nowhere"/> and for the default value.</summary>
    public bool IsSomewhere => Line > 0;

    /// <summary>Orders by file (ordinal), then line, then column.</summary>
    public int CompareTo(Mark other)
    {
        var byFile = string.CompareOrdinal(File, other.File);
        if (byFile != 0)
        {
            return byFile;
        }

        return Line != other.Line ? Line.CompareTo(other.Line) : Column.CompareTo(other.Column);
    }

    /// <summary><c>gig.yaml:12:7</c>, or <c>nowhere</c>.</summary>
    public override string ToString() => IsSomewhere ? $"{File}:{Line}:{Column}" : "nowhere";
}
