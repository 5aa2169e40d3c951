using Advance.Paper.Setting;
using Advance.Paper.Tree;

namespace Advance.Paper.Layout;

/// <summary>Sets one row of a table on a grid: heads, groups' heads and rows.</summary>
internal sealed class RowSetter(SetTable set, Grid grid, Room room)
{
    private const int Hairline = 350;
    private const int Full = 700;
    private const int Heavy = 1600;

    private readonly int pad = room.Scale.RowPad;

    /// <summary>The heads of the columns, standing on one line.</summary>
    public Strip Head()
    {
        var marks = new List<Mark>();
        var fitted = Array.ConvertAll(grid.Columns, c => set.Heads[c]);
        var lines = new SetLines[fitted.Length];
        var tallest = 0;
        for (var i = 0; i < lines.Length; i++)
        {
            lines[i] = fitted[i].Fit(grid.Widths[i]);
            tallest = Math.Max(tallest, lines[i].Height);
        }

        for (var i = 0; i < lines.Length; i++)
        {
            lines[i].Draw(marks, grid.Lefts[i], tallest - lines[i].Height, grid.Widths[i], set.Table.Columns[grid.Columns[i]].Align);
        }

        var height = tallest == 0 ? 0 : tallest + (pad / 2);
        marks.Add(new StrokeMark(0, height, grid.Width, height, Full, Shade.Ink));
        return new Strip(height, marks) { KeepsNext = true };
    }

    public Strip GroupHead(IReadOnlyList<Inline> text, TypeStyle style, IReadOnlyList<Strip> heads, int group, int count)
    {
        var lines = room.Composer.Compose(text, style).Fit(grid.Room);
        var marks = new List<Mark>();
        lines.Draw(marks, 0, pad * 2, grid.Room, Align.Left);
        var height = lines.Height + (pad * 3);
        marks.Add(new StrokeMark(0, height, grid.Width, height, Hairline, Shade.Ink));
        return new Strip(height, marks) { KeepsNext = true, Heads = heads, Group = group, GroupCount = count };
    }

    /// <summary>A line of text in place of rows.</summary>
    public Strip FullWidth(IReadOnlyList<Inline> text, TypeStyle style, IReadOnlyList<Strip> heads)
    {
        var lines = room.Composer.Compose(text, style).Fit(grid.Room);
        var marks = new List<Mark>();
        lines.Draw(marks, 0, pad, grid.Room, Align.Left);
        var height = lines.Height + (pad * 2);
        marks.Add(new StrokeMark(0, height, grid.Width, height, Hairline, Shade.Hair));
        return new Strip(height, marks) { Heads = heads };
    }

    public Strip Set(SetRow row, Row? previous, Row? next, IReadOnlyList<Strip> heads, int group, int index, int count)
    {
        var marks = new List<Mark>(row.Cells.Count + 2);
        if (row.Row.Id is { } id)
        {
            marks.Add(new AnchorMark(0, id));
        }

        var over = row.Row.Kind == RowKind.Hold ? pad * 2 : pad;
        var fitted = Fit(row, over, out var inner);
        var height = inner + (over * 2);
        foreach (var cell in fitted)
        {
            Draw(cell, over, height, marks);
        }

        DrawRules(row.Row, next, height, marks);
        DrawBracket(previous is { JoinsNext: true }, row.Row.JoinsNext && next is not null, height, marks);
        return new Strip(height, marks) { Heads = heads, Group = group, InGroup = index, GroupCount = count };
    }

    /// <summary>Fits each cell into its room; first lines stand on one base line.</summary>
    private List<FittedCell> Fit(SetRow row, int over, out int inner)
    {
        var cells = new List<FittedCell>(row.Cells.Count);
        var baseline = 0;
        var below = TypeScale.Leading(room.Composer.Body.Size);
        foreach (var cell in row.Cells)
        {
            // A point where all stop is told on each part of a table that is split.
            var place = row.Row.Kind == RowKind.Hold ? (0, grid.Room) : grid.Find(cell);
            if (place is not var (x, width))
            {
                continue;
            }

            var indent = row.Indent(cell, room.Scale);
            var lines = cell.Text.Fit(Math.Max(1000, width - indent));
            cells.Add(new FittedCell(cell, lines, x, width, indent));
            baseline = Math.Max(baseline, lines.Baseline);
        }

        foreach (var cell in cells)
        {
            below = Math.Max(below, cell.Lines.Height + (cell.Lines.Count == 0 ? 0 : baseline - cell.Lines.Baseline));
        }

        inner = below;
        for (var i = 0; i < cells.Count; i++)
        {
            cells[i] = cells[i] with { Y = over + (cells[i].Lines.Count == 0 ? 0 : baseline - cells[i].Lines.Baseline) };
        }

        return cells;
    }

    private static void Draw(FittedCell cell, int over, int height, List<Mark> marks)
    {
        if (cell.Cell.Verdict != Verdict.Plain)
        {
            marks.Add(Verdicts.Ground(cell.Cell.Verdict, cell.X - 2500, over / 2, cell.Width + 5000, height - over));
        }

        cell.Lines.Draw(marks, cell.X + cell.Indent, cell.Y, cell.Width - cell.Indent, cell.Cell.Align);
    }

    private void DrawRules(Row row, Row? next, int height, List<Mark> marks)
    {
        switch (row.Kind)
        {
            case RowKind.Hold:
                marks.Add(new StrokeMark(0, Heavy / 2, grid.Room, Heavy / 2, Heavy, Shade.Ink));
                marks.Add(new StrokeMark(0, height - (Heavy / 2), grid.Room, height - (Heavy / 2), Heavy, Shade.Ink));
                break;
            case RowKind.Total:
                marks.Add(new StrokeMark(0, 0, grid.Width, 0, Full, Shade.Ink));
                marks.Add(new StrokeMark(0, height, grid.Width, height, Full, Shade.Ink));
                break;
            default:
                if (next?.Kind != RowKind.Sub)
                {
                    marks.Add(new StrokeMark(0, height, grid.Width, height, Hairline, Shade.Hair));
                }

                break;
        }
    }

    /// <summary>The bracket of joined rows stands in the margin at the left.</summary>
    private static void DrawBracket(bool fromAbove, bool toBelow, int height, List<Mark> marks)
    {
        const int x = -5000;
        const int tick = 2500;
        if (!fromAbove && !toBelow)
        {
            return;
        }

        var (top, bottom) = (fromAbove ? 0 : height / 3, toBelow ? height : height * 2 / 3);
        marks.Add(new StrokeMark(x, top, x, bottom, Full, Shade.Ink));
        if (!fromAbove)
        {
            marks.Add(new StrokeMark(x, top, x + tick, top, Full, Shade.Ink));
        }

        if (!toBelow)
        {
            marks.Add(new StrokeMark(x, bottom, x + tick, bottom, Full, Shade.Ink));
        }
    }

    private readonly record struct FittedCell(SetCell Cell, SetLines Lines, int X, int Width, int Indent)
    {
        public int Y { get; init; }
    }
}
