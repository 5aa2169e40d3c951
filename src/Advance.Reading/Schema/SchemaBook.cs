using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;

namespace Advance.Reading.Schema;

/// <summary>Collects the definitions of a JSON Schema, so that each record and phrase is defined once, under its name.</summary>
internal sealed class SchemaBook
{
    private readonly SortedDictionary<string, JsonObject> definitions = new(StringComparer.Ordinal);

    /// <summary>All definitions, by name.</summary>
    public JsonObject Definitions => new(definitions.Select(one => KeyValuePair.Create(one.Key, (JsonNode?)one.Value.DeepClone())));

    /// <summary>A reference to the definition of a phrase.</summary>
    public JsonObject Phrase(Phrase phrase, Tbc tbc)
    {
        var name = tbc switch { Tbc.AfterValue => phrase.Name, Tbc.Instead => $"{phrase.Name}-or-tbc", _ => $"{phrase.Name}-or-nothing" };
        definitions.TryAdd(name, DefinePhrase(phrase, tbc));
        return Reference(name);
    }

    /// <summary>A reference to the definition of a record.</summary>
    /// <param name="record">The record.</param>
    /// <param name="nameKey">The key that holds its name, where it stands as a row of a table.</param>
    public JsonObject Record(IRecord record, string? nameKey = null)
    {
        var name = nameKey is null ? record.Name : $"{record.Name}-row";
        if (definitions.TryAdd(name, []))
        {
            definitions[name] = DefineRecord(record, nameKey);
        }

        return Reference(name);
    }

    /// <summary>Something that is no text, and what may stand instead of it.</summary>
    /// <param name="tbc">What may stand there.</param>
    /// <param name="what">The schema of the thing itself.</param>
    public JsonObject Open(Tbc tbc, JsonObject what)
    {
        var choices = new List<JsonNode> { what };
        if (tbc != Tbc.AfterValue)
        {
            definitions.TryAdd("tbc", new() { ["description"] = "to be confirmed, by whom and when: TBC venue by 4 Sep", ["type"] = "string", ["pattern"] = $"^{Tail.Pattern}$" });
            choices.Add(Reference("tbc"));
        }

        if (tbc == Tbc.OrNothing)
        {
            choices.Add(Nothing());
        }

        return choices.Count == 1 ? what : new() { ["anyOf"] = new JsonArray([.. choices]) };
    }

    /// <summary>A value that is blank.</summary>
    public static JsonObject Nothing() => new() { ["type"] = "null" };

    private static JsonObject DefinePhrase(Phrase phrase, Tbc tbc)
    {
        var pattern = tbc == Tbc.AfterValue
            ? $@"^(?!{Tail.Pattern}$)(?:{phrase.Pattern})(?:\s+{Tail.Pattern})?$"
            : $@"^(?:(?:{phrase.Pattern})(?:\s+{Tail.Pattern})?|{Tail.Pattern})$";
        return new()
        {
            ["description"] = phrase.Words,
            ["type"] = Types(phrase, pattern, tbc),
            ["pattern"] = pattern,
            ["examples"] = new JsonArray([.. phrase.Examples.Select(example => (JsonNode)example)]),
        };
    }

    // An editor takes 5 for a number and true for neither text nor number; here every scalar is a text.
    private static JsonArray Types(Phrase phrase, string pattern, Tbc tbc)
    {
        var types = new JsonArray("string");
        foreach (var (type, examples) in (ReadOnlySpan<(string, IEnumerable<string>)>)[("number", phrase.Examples.Where(IsNumber).Append("5")), ("boolean", ["true"])])
        {
            if (examples.Any(example => Regex.IsMatch(example, pattern, RegexOptions.None, TimeSpan.FromSeconds(1))))
            {
                types.Add((JsonNode)type);
            }
        }

        if (tbc == Tbc.OrNothing)
        {
            types.Add((JsonNode)"null");
        }

        return types;
    }

    private static bool IsNumber(string text) => double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _);

    private JsonObject DefineRecord(IRecord record, string? nameKey)
    {
        var properties = new JsonObject();
        var needed = record.Fields.Where(field => field.IsNeeded).Select(field => field.Key).ToList();
        if (nameKey is not null)
        {
            properties[nameKey] = Phrase(Texts.Name, Tbc.AfterValue);
            needed.Insert(0, nameKey);
        }

        foreach (var field in record.Fields)
        {
            var schema = field.Shape.Schema(this, field.IsNeeded ? Tbc.AfterValue : Tbc.OrNothing);
            schema["description"] = field.Words;
            properties[field.Key] = schema;
        }

        var defined = new JsonObject { ["description"] = record.About, ["type"] = "object", ["properties"] = properties };
        if (needed.Count > 0)
        {
            defined["required"] = new JsonArray([.. needed.Select(key => (JsonNode)key)]);
        }

        defined["additionalProperties"] = false;
        if (record.Rules.Count > 0)
        {
            defined["allOf"] = new JsonArray([.. record.Rules.Select(rule => rule.Schema())]);
        }

        return defined;
    }

    private static JsonObject Reference(string name) => new() { ["$ref"] = $"#/$defs/{name}" };
}
