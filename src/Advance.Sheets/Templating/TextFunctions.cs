using Scriban.Runtime;

namespace Advance.Sheets.Templating;

/// <summary>Functions on text.</summary>
internal static class TextFunctions
{
    public static IReadOnlyList<TemplateFunction> All { get; } =
    [
        new("lines", (_, given) => Lines(Text(given, 0)))
        {
            Takes = [typeof(string)],
            Means = "keeps the line ends of a text as line breaks",
            Example = "lines \"one\\ntwo & three\"",
            Prints = "one<br/>two &amp; three",
        },
        new("string.upcase", (_, given) => Text(given, 0).ToUpperInvariant())
        {
            Takes = [typeof(string)],
            Means = "all letters as capitals",
            Example = "string.upcase \"hold\"",
            Prints = "HOLD",
        },
        new("string.downcase", (_, given) => Text(given, 0).ToLowerInvariant())
        {
            Takes = [typeof(string)],
            Means = "no letter as a capital",
            Example = "string.downcase \"HOLD\"",
            Prints = "hold",
        },
        new("string.capitalize", (_, given) => Capitalize(Text(given, 0)))
        {
            Takes = [typeof(string)],
            Means = "the first letter as a capital",
            Example = "string.capitalize \"hold on\"",
            Prints = "Hold on",
        },
        new("string.strip", (_, given) => Text(given, 0).Trim())
        {
            Takes = [typeof(string)],
            Means = "without white space at both ends",
            Example = "string.strip \"  hold \"",
            Prints = "hold",
        },
        new("string.size", (_, given) => Text(given, 0).Length)
        {
            Takes = [typeof(string)],
            Means = "how many letters",
            Example = "string.size \"hold\"",
            Prints = "4",
        },
        new("string.contains", (_, given) => Text(given, 0).Contains(Text(given, 1), StringComparison.Ordinal))
        {
            Takes = [typeof(string), typeof(string)],
            Means = "whether the second is in the first",
            Example = "if string.contains \"hold\" \"old\"; \"yes\"; end",
            Prints = "yes",
        },
        new("string.starts_with", (_, given) => Text(given, 0).StartsWith(Text(given, 1), StringComparison.Ordinal))
        {
            Takes = [typeof(string), typeof(string)],
            Means = "whether the first begins with the second",
            Example = "if string.starts_with \"hold\" \"ho\"; \"yes\"; end",
            Prints = "yes",
        },
        new("string.ends_with", (_, given) => Text(given, 0).EndsWith(Text(given, 1), StringComparison.Ordinal))
        {
            Takes = [typeof(string), typeof(string)],
            Means = "whether the first ends with the second",
            Example = "if string.ends_with \"hold\" \"ld\"; \"yes\"; end",
            Prints = "yes",
        },
    ];

    private static string Text(ScriptArray given, int at) => given[at] as string ?? "";

    private static string Capitalize(string text) => text.Length == 0 ? "" : char.ToUpperInvariant(text[0]) + text[1..];

    private static TrustedMarkup Lines(string text) =>
        new(string.Join("<br/>", text.ReplaceLineEndings("\n").Split('\n').Select(Escaping.Escape)));
}
