using Advance.Domain.Naming;
using Advance.Reading.Shapes;
using Advance.Reading.Yaml;

namespace Advance.Reading.Tables;

/// <summary>Turns the rows of a table into maps, as if they had been written so.</summary>
/// <param name="fields">The keys that a row may have.</param>
/// <param name="name">The key that names the row; null where rows have no names.</param>
/// <param name="where">What a row is, for findings.</param>
internal sealed class Columns(IReadOnlyList<Field> fields, string? name, string where)
{
    private readonly List<string> known = [.. (name is null ? (string[])[] : [name]), .. fields.Select(field => field.Key)];

    /// <summary>The rows as maps; null where the headings will not do.</summary>
    public IReadOnlyList<MapNode>? Turn(Grid grid, Reader reader)
    {
        var columns = new List<Column>();
        foreach (var heading in grid.Headings)
        {
            columns.Add(Find(heading, columns, reader));
        }

        var rows = new List<MapNode>();
        foreach (var row in grid.Rows)
        {
            rows.Add(Turn(grid, row, columns, reader));
        }

        return HasAllNeeded(grid, columns, reader) ? rows : null;
    }

    private Column Find(CellNode heading, List<Column> before, Reader reader)
    {
        if (heading.IsBlank)
        {
            reader.Fault(TableFindings.HeadingBlank(heading.At));
            return default;
        }

        var found = Resolve(heading.Text);
        if (found.Key is null)
        {
            reader.Fault(ShapeFindings.UnknownKey(heading, where, known));
            return found with { Guess = Nearest.To(heading.Text, known) };
        }

        if (before.Exists(column => column.Key == found.Key))
        {
            reader.Fault(TableFindings.HeadingTwice(heading.At, heading.Text));
            return default;
        }

        return found;
    }

    // A heading is a key, with spaces for hyphens and capitals as one likes, or a key and the unit of the bare numbers below it.
    private Column Resolve(string heading)
    {
        var key = AsKey(heading);
        if (known.Contains(key))
        {
            return new(key, null, null);
        }

        var bare = heading.TrimEnd(')', ']');
        var unit = bare[(bare.LastIndexOfAny([' ', '(', '[', ',']) + 1)..];
        key = AsKey(bare[..^unit.Length].TrimEnd(' ', '(', '[', ','));
        return fields.FirstOrDefault(field => field.Key == key)?.Shape is IPhrased { Phrase: { } phrase } && unit.Length > 0 && phrase.FaultOf($"1 {unit}") is null
            ? new(key, unit, null)
            : default;
    }

    private static string AsKey(string heading) =>
        string.Join('-', heading.ToLowerInvariant().Split([' ', '_', '-'], StringSplitOptions.RemoveEmptyEntries));

    private bool HasAllNeeded(Grid grid, List<Column> columns, Reader reader)
    {
        var isWhole = true;
        foreach (var key in known.Where(key => key == name || fields.Any(field => field.Key == key && field.IsNeeded)))
        {
            if (columns.Exists(column => column.Key == key))
            {
                continue;
            }

            isWhole = columns.Exists(column => column.Guess == key) ? false : reader.Fault(TableFindings.NoColumn(grid.Headings[0].At, key, where));
        }

        return isWhole;
    }

    private static MapNode Turn(Grid grid, IReadOnlyList<CellNode> row, List<Column> columns, Reader reader)
    {
        var entries = new List<MapEntry>();
        var isPartial = false;
        for (var index = 0; index < columns.Count; index++)
        {
            var cell = grid.Cell(row, index);
            isPartial |= columns[index].Key is null && !cell.IsBlank;
            if (columns[index].Key is { } key)
            {
                entries.Add(new(new ScalarNode(key, cell.At), columns[index].Unit is { } unit && IsBareNumber(cell.Text) ? cell.With(unit) : cell));
            }
        }

        foreach (var extra in row.Skip(columns.Count).Where(cell => !cell.IsBlank))
        {
            isPartial = !reader.Fault(TableFindings.TooManyCells(extra.At, columns.Count));
        }

        return new(entries, isPartial, row[0].At, entries.Count + 1);
    }

    private static bool IsBareNumber(string text) => text.Length > 0 && text.All(sign => char.IsAsciiDigit(sign) || sign is '.' or '-');
}
