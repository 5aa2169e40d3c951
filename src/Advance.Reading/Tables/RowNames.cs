using Advance.Domain.Facts;
using Advance.Reading.Shapes;
using Advance.Reading.Yaml;

namespace Advance.Reading.Tables;

/// <summary>What the rows of a table are called: things by their names, others by what stands in their first key.</summary>
/// <param name="key">The key that holds the name.</param>
/// <param name="areKeys">Whether the names are those of things, so that each must be there, once, and is no key of the thing itself.</param>
internal sealed class RowNames(string key, bool areKeys)
{
    private readonly Dictionary<string, Mark> seen = new(StringComparer.Ordinal);

    /// <summary>Takes the name of a row.</summary>
    /// <param name="row">The row; without the name afterwards, where that is no key of the thing.</param>
    /// <param name="reader">Takes what is wrong with the name.</param>
    /// <param name="title">The name, or a blank one at the row's place.</param>
    public bool Take(ref Node row, Reader reader, out ScalarNode title)
    {
        title = new("", row.At);
        if (row is not MapNode map)
        {
            return row is not SpoiltNode && (!areKeys || reader.Fault(ShapeFindings.Missing(row.At, key, "this row", "a name")));
        }

        var entry = map.Entries.FirstOrDefault(one => one.Key.Text == key);
        title = entry.Value as ScalarNode ?? title;
        return !areKeys || TakeKey(ref row, map, entry, reader, ref title);
    }

    private bool TakeKey(ref Node row, MapNode map, MapEntry entry, Reader reader, ref ScalarNode title)
    {
        row = new MapNode([.. map.Entries.Where(one => one != entry)], map.IsPartial, map.At, map.Weight);
        if (entry.Key is null)
        {
            return !map.IsPartial && reader.Fault(ShapeFindings.Missing(map.At, key, "this row", "a name"));
        }

        if (title.IsBlank)
        {
            return reader.Fault(ShapeFindings.Blank(entry.Value.At, key, "a name"));
        }

        if (!Settling.TrySettle(title, reader, out var rest, out _))
        {
            return false;
        }

        if (rest is null)
        {
            return reader.Fault(ShapeFindings.NeededNow(title.At, key, "a name"));
        }

        title = (ScalarNode)rest;
        return seen.TryAdd(title.Text, title.At) || reader.Fault(ShapeFindings.NameTwice(title.At, title.Text, seen[title.Text]));
    }
}
