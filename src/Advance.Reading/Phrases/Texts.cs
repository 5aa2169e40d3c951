using Advance.Reading.Files;

namespace Advance.Reading.Phrases;

/// <summary>Text that is kept as it is written.</summary>
internal static class Texts
{
    /// <summary>Any text.</summary>
    public static readonly Phrase<string> Text = new("text", "a text", Patterns.Text, ["Van at stage door", "No", "2.10"], ReadAll, takes: "text");

    /// <summary>The name of a thing.</summary>
    public static readonly Phrase<string> Name = new("name", "a name", Patterns.Text, ["FOH", "Main SR", "The Threshers"], ReadAll, takes: "a name");

    /// <summary>A file or a folder.</summary>
    public static readonly Phrase<string> Path = new("path", "a path", Patterns.Text, ["../company.yaml", "../stock"], ReadAll);

    /// <summary>A picture's file.</summary>
    public static readonly Phrase<string> Picture = new(
        "picture", "a path from this file", """(?![/~])[^:\\\s](?:[^:\\]*[^:\\\s])?""", ["logo.png", "pictures/logo.svg"], ReadPath);

    private static bool ReadPath(Cursor cursor, out string value) => ReadAll(cursor, out value) && !TreePath.IsAbsolute(value);

    private static bool ReadAll(Cursor cursor, out string value)
    {
        value = cursor.Written(cursor.At, cursor.Text.Length);
        cursor.At = cursor.Text.Length;
        return value.Length > 0;
    }
}
