using System.Text.Json.Nodes;

namespace Advance.Reading.Tables;

/// <summary>Tables as texts: what the schema says of them, and samples drawn.</summary>
internal static class TableText
{
    /// <summary>A block of lines, or the name of a file.</summary>
    public static JsonObject Schema() => new()
    {
        ["description"] = "a table with | between its cells, headings first, in a block after |; or the name of a .csv or .xlsx file",
        ["type"] = "string",
        ["pattern"] = @"^(?:[\s\S]*\n[\s\S]*|[^\n]*\.(?:[Cc][Ss][Vv]|[Xx][Ll][Ss][Xx]))$",
    };

    /// <summary>Draws rows as a table; null where a row holds what no cell can.</summary>
    public static JsonValue? Draw(JsonArray rows)
    {
        var headings = rows.SelectMany(row => ((JsonObject)row!).Select(entry => entry.Key)).Distinct().ToList();
        if (rows.Any(row => ((JsonObject)row!).Any(entry => !IsCell(entry.Value))) || headings.Count == 0)
        {
            return null;
        }

        var lines = rows.Select(row => string.Join(" | ", headings.Select(heading => row![heading]?.GetValue<string>() ?? "")));
        return JsonValue.Create(string.Join('\n', lines.Prepend(string.Join(" | ", headings))));
    }

    private static bool IsCell(JsonNode? value) => value is JsonValue one && one.TryGetValue<string>(out var text) && text.AsSpan().IndexOfAny('|', '\n') < 0;
}
