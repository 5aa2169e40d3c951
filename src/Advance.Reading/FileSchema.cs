using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Advance.Reading.Schema;
using Advance.Reading.Shapes;

namespace Advance.Reading;

/// <summary>JSON Schemas of the files, for editors. They come from the shapes that read.</summary>
public static class FileSchema
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, NewLine = "\n" };

    /// <summary>The schema of a kind of file, draft 2020-12; the same text each time.</summary>
    /// <param name="file"><c>gig</c>, <c>venue</c>, <c>company</c> or <c>stock</c>.</param>
    /// <exception cref="ArgumentException">Another kind.</exception>
    public static string Write(string file) => Of(FileShapes.Of(file)).ToJsonString(Indented) + "\n";

    internal static JsonObject Of(Shape shape)
    {
        var book = new SchemaBook();
        var root = shape.Schema(book, Tbc.AfterValue);
        var schema = new JsonObject { ["$schema"] = "https://json-schema.org/draft/2020-12/schema" };
        foreach (var (key, value) in root)
        {
            schema[key] = value?.DeepClone();
        }

        schema["$defs"] = book.Definitions;
        return schema;
    }
}
