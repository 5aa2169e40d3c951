namespace Advance.Reading.Phrases;

/// <summary>Text that is kept as it is written.</summary>
internal static class Texts
{
    /// <summary>Any text.</summary>
    public static readonly Phrase<string> Text = new("text", "a text", Patterns.Text, ["Van at stage door", "No", "2.10"], ReadAll);

    /// <summary>The name of a thing.</summary>
    public static readonly Phrase<string> Name = new("name", "a name", Patterns.Text, ["FOH", "Main SR", "The Threshers"], ReadAll);

    private static bool ReadAll(Cursor cursor, out string value)
    {
        value = cursor.Written(cursor.At, cursor.Text.Length);
        cursor.At = cursor.Text.Length;
        return value.Length > 0;
    }
}
