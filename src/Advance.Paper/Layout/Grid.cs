namespace Advance.Paper.Layout;

/// <summary>Where the columns of a table, or of a part of it, stand.</summary>
internal sealed class Grid
{
    private readonly int[] place;

    /// <param name="columns">Numbers of the columns that are shown, from left to right.</param>
    /// <param name="widths">The width of each of these, in 1/1000 pt.</param>
    /// <param name="gap">Between two columns.</param>
    /// <param name="count">How many columns the table has.</param>
    /// <param name="room">Width of what the table stands in.</param>
    public Grid(int[] columns, int[] widths, int gap, int count, int room)
    {
        Columns = columns;
        Widths = widths;
        Lefts = new int[widths.Length];
        place = new int[count];
        Array.Fill(place, -1);
        for (var i = 0; i < widths.Length; i++)
        {
            Lefts[i] = Width;
            Width += widths[i] + (i + 1 < widths.Length ? gap : 0);
            place[columns[i]] = i;
        }

        Room = Math.Max(Width, room);
    }

    public int[] Columns { get; }

    public int[] Widths { get; }

    public int[] Lefts { get; }

    /// <summary>Width of all with the gaps between them.</summary>
    public int Width { get; }

    /// <summary>For what stands across all columns: it may go on beside a narrow table.</summary>
    public int Room { get; }

    /// <summary>Where a cell stands; null when its first column is not shown here.</summary>
    public (int X, int Width)? Find(SetCell cell)
    {
        var first = place[cell.Column];
        if (first < 0)
        {
            return null;
        }

        var last = first;
        for (var column = cell.Column + 1; column < cell.Column + cell.Span && place[column] == last + 1; column++)
        {
            last++;
        }

        return (Lefts[first], Lefts[last] + Widths[last] - Lefts[first]);
    }
}
