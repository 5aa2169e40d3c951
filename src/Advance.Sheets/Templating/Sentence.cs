namespace Advance.Sheets.Templating;

/// <summary>Makes a sentence of a message of the template engine's, which may or may not begin and end like one.</summary>
internal static class Sentence
{
    public static string Of(string message)
    {
        var trimmed = message.Trim();
        return trimmed.Length == 0
            ? "The template is wrong here."
            : char.ToUpperInvariant(trimmed[0]) + trimmed[1..] + (trimmed[^1] == '.' ? "" : ".");
    }
}
