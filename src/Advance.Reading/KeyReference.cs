using System.Text;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;
using Advance.Reading.Tables;

namespace Advance.Reading;

/// <summary>All keys of the files with what they mean, in Markdown. It comes from the shapes that read.</summary>
public static class KeyReference
{
    /// <summary>The reference of a kind of file; the same text each time.</summary>
    /// <param name="file"><c>gig</c>, <c>venue</c>, <c>company</c> or <c>stock</c>.</param>
    /// <exception cref="ArgumentException">Another kind.</exception>
    public static string Write(string file)
    {
        var records = new List<IRecord>();
        var phrases = new SortedDictionary<string, Phrase>(StringComparer.Ordinal);
        Collect(FileShapes.Of(file), records, phrases, []);

        var text = new StringBuilder($"# Keys of a {file} file\n\nAny value may end in `TBC`, `TBC venue` or `TBC venue by 4 Sep`; what may be left out may be `TBC` alone.\n");
        foreach (var record in records)
        {
            Append(text, record);
        }

        text.Append("\n## Notations\n\n| name | what it is | examples |\n|---|---|---|\n");
        foreach (var phrase in phrases.Values)
        {
            text.Append($"| {phrase.Name} | {phrase.Words} | {string.Join(", ", phrase.Examples.Select(Code))} |\n");
        }

        return text.ToString();
    }

    private static void Append(StringBuilder text, IRecord record)
    {
        text.Append($"\n## {record.Name}\n\n{record.About}\n\n| key | what for | takes | when left out |\n|---|---|---|---|\n");
        foreach (var field in record.Fields)
        {
            text.Append($"| `{field.Key}` | {Cell(field.Words)} | {Cell(Takes(field.Shape))} | {(field.IsNeeded ? "**needed**" : Cell(field.Otherwise))} |\n");
        }
    }

    private static string Takes(Shape shape) => shape is ITable { NameKey: { } name } ? $"{shape.Takes}, named by `{name}`" : shape.Takes;

    // Records in the order in which their names are met; each once, also where they hold each other.
    private static void Collect(Shape shape, List<IRecord> records, SortedDictionary<string, Phrase> phrases, HashSet<Shape> seen)
    {
        if (!seen.Add(shape))
        {
            return;
        }

        if (shape is IRecord record)
        {
            records.Add(record);
        }

        if (shape is IPhrased { Phrase: { } phrase })
        {
            phrases.TryAdd(phrase.Name, phrase);
        }

        foreach (var part in shape.Parts)
        {
            Collect(part, records, phrases, seen);
        }
    }

    private static string Code(string example) => $"`{Cell(example)}`";

    private static string Cell(string words) => words.Replace("|", "\\|", StringComparison.Ordinal);
}
