using System.Text.Json.Nodes;
using Advance.Domain.Facts;
using Advance.Domain.Findings;

namespace Advance.Reading.Shapes;

/// <summary>What holds between keys of a record. A key counts as written when something stands after its colon, if only TBC.</summary>
internal abstract class KeyRule
{
    /// <summary>The keys that it is about.</summary>
    public abstract IReadOnlyList<string> Keys { get; }

    /// <summary>What is wrong; null where it holds.</summary>
    /// <param name="isWritten">Whether a key was written.</param>
    /// <param name="at">Where the record stands.</param>
    /// <param name="where">What the record is called.</param>
    public abstract Finding? Broken(Func<string, bool> isWritten, Mark at, string where);

    /// <summary>The same for the schema.</summary>
    public abstract JsonObject Schema();

    /// <summary>Makes a sample keep to it.</summary>
    /// <param name="sample">The record, with some of its keys.</param>
    /// <param name="make">Makes the value of a key.</param>
    /// <param name="choices">Decides where there is a choice.</param>
    public abstract void Settle(JsonObject sample, Func<string, JsonNode> make, Choices choices);

    /// <summary>The schema of records in which all of these are written.</summary>
    protected static JsonObject AllWritten(IEnumerable<string> keys)
    {
        var names = keys.ToList();
        return new()
        {
            ["required"] = new JsonArray([.. names.Select(key => (JsonNode)key)]),
            ["properties"] = new JsonObject(names.Select(key => KeyValuePair.Create(key, (JsonNode?)new JsonObject { ["not"] = new JsonObject { ["type"] = "null" } }))),
        };
    }

    /// <summary>The schema of records in which none of these is written.</summary>
    protected static JsonObject NoneWritten(IEnumerable<string> keys) =>
        new() { ["properties"] = new JsonObject(keys.Select(key => KeyValuePair.Create(key, (JsonNode?)new JsonObject { ["type"] = "null" }))) };
}
