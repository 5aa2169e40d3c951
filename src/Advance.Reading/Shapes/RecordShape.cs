using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Advance.Domain.Facts;
using Advance.Domain.Naming;
using Advance.Reading.Schema;
using Advance.Reading.Yaml;

namespace Advance.Reading.Shapes;

/// <summary>A thing with known keys.</summary>
/// <typeparam name="T">What is made of it.</typeparam>
internal sealed class RecordShape<T> : Shape<T>, IRecord
    where T : notnull
{
    private readonly IReadOnlyList<Field> fields;
    private readonly Func<Row, T> make;

    /// <summary>Declares a record.</summary>
    /// <param name="name">Its name in schema and reference: <c>stack</c>.</param>
    /// <param name="about">What it is, for the reference.</param>
    /// <param name="declare">Declares the keys, and gives what makes the thing of their values.</param>
    public RecordShape(string name, string about, Func<Keys, Func<Row, T>> declare)
    {
        var keys = new Keys();
        make = declare(keys);
        fields = keys.Fields;
        Rules = keys.Rules;
        Name = name;
        About = about;
        KeyNames = [.. fields.Select(field => field.Key)];
    }

    /// <inheritdoc/>
    public string Name { get; }

    /// <inheritdoc/>
    public string About { get; }

    /// <inheritdoc/>
    public IReadOnlyList<Field> Fields => fields;

    /// <inheritdoc/>
    public IReadOnlyList<KeyRule> Rules { get; }

    /// <summary>The keys, in the order of their declaration.</summary>
    public IReadOnlyList<string> KeyNames { get; }

    /// <inheritdoc/>
    public override string Words => $"a map with the keys of {Name}";

    /// <inheritdoc/>
    public override string Takes => $"[{Name}](#{Name})";

    /// <inheritdoc/>
    public override IEnumerable<Shape> Parts => fields.Select(one => one.Shape);

    /// <inheritdoc/>
    public override bool MayBeBlank => fields.All(one => !one.IsNeeded);

    /// <inheritdoc/>
    public override bool Fits(Node node) => node is MapNode or ScalarNode { IsBlank: true };

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaBook book, Tbc tbc) => book.Open(tbc, book.Record(this));

    /// <inheritdoc/>
    public override JsonNode Sample(Choices choices)
    {
        var sample = new JsonObject();
        choices.Depth++;
        foreach (var field in fields)
        {
            if (field.IsNeeded || choices.Writes())
            {
                sample[field.Key] = field.Shape.Sample(choices);
            }
        }

        foreach (var rule in Rules)
        {
            rule.Settle(sample, key => fields.First(one => one.Key == key).Shape.Sample(choices), choices);
        }

        choices.Depth--;
        return sample;
    }

    /// <inheritdoc/>
    protected override bool Read(Node node, Reader reader, [MaybeNullWhen(false)] out T value)
    {
        var map = node as MapNode ?? new MapNode([], isPartial: false, node.At, 1);
        var at = reader.NamedAt.IsSomewhere ? reader.NamedAt : map.At;
        var values = new object?[fields.Count];
        var guesses = ReportUnknown(map, reader);
        var isWhole = guesses.Count == 0 && !map.IsPartial;
        for (var index = 0; index < fields.Count; index++)
        {
            isWhole &= ReadField(fields[index], map, guesses, at, reader, out values[index]);
        }

        isWhole &= KeepsRules(map, guesses, at, reader);
        value = isWhole ? make(new Row(reader.Name, at, values)) : default;
        return isWhole;
    }

    private bool ReadField(Field field, MapNode map, List<string?> guesses, Mark at, Reader reader, out object? value)
    {
        foreach (var (key, node) in map.Entries)
        {
            if (key.Text == field.Key)
            {
                return field.TryRead(node, key.At, Name, reader, out value);
            }
        }

        // What seems to be missing may be what could not be made out, or what stands there misspelt.
        value = null;
        return !(field.IsNeeded && (map.IsPartial || guesses.Contains(field.Key))) && field.TryRead(null, at, reader.Name.Length > 0 ? reader.Name : Name, reader, out value);
    }

    private bool KeepsRules(MapNode map, List<string?> guesses, Mark at, Reader reader)
    {
        var isKept = true;
        foreach (var rule in Rules.Where(rule => !map.IsPartial && !rule.Keys.Any(guesses.Contains)))
        {
            var broken = rule.Broken(key => map.Entries.Any(entry => entry.Key.Text == key && !IsBlank(entry.Value)), at, reader.Name.Length > 0 ? reader.Name : Name);
            isKept &= broken is null || reader.Fault(broken);
        }

        return isKept;
    }

    private static bool IsBlank(Node node) => node is ScalarNode { IsBlank: true } and not BlockNode;

    // Gives for each unknown key what was probably meant.
    private List<string?> ReportUnknown(MapNode map, Reader reader)
    {
        var guesses = new List<string?>();
        foreach (var (key, _) in map.Entries)
        {
            if (!KeyNames.Contains(key.Text))
            {
                reader.Fault(ShapeFindings.UnknownKey(key, Name, KeyNames));
                guesses.Add(Nearest.To(key.Text, KeyNames));
            }
        }

        return guesses;
    }
}
