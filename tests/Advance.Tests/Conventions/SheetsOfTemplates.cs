using System.Text;
using System.Text.RegularExpressions;
using Advance.Sheets;

namespace Advance.Tests.Conventions;

/// <summary>The sheets as their templates declare them, in the order of the package.</summary>
internal static partial class SheetsOfTemplates
{
    public static IEnumerable<string> Names => [SheetList.DaySheet, .. SheetList.Others.Select(sheet => sheet.Template)];

    public static string Write()
    {
        var text = new StringBuilder("# The sheets\n\nIn the order of the package, as their templates declare them. Whoever is in no list of readers gets the sheet with `--for all`.\n\n");
        text.Append("| template | title | for | readers | type |\n|---|---|---|---|---|\n");
        foreach (var name in Names)
        {
            foreach (Match section in Section().Matches(File.ReadAllText(Repository.Path("templates", "sheets", $"{name}.html"))))
            {
                var attributes = Attribute().Matches(section.Value).ToDictionary(match => match.Groups["name"].Value, match => Plain(match.Groups["value"].Value), StringComparer.Ordinal);
                text.Append($"| `{name}` | {attributes["title"]} | {attributes["data-for"]} | {attributes["data-readers"]} | {attributes.GetValueOrDefault("data-type", "desk")} |\n");
            }
        }

        return text.ToString();
    }

    // What a template puts in is told as dots.
    private static string Plain(string value) => Script().Replace(value, "…");

    [GeneratedRegex("<section class=\"sheet\"(?:[^>{]|\\{\\{.*?\\}\\})*>", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Section();

    [GeneratedRegex("(?<name>[a-z-]+)=\"(?<value>(?:[^\"{]|\\{\\{.*?\\}\\})*)\"", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Attribute();

    [GeneratedRegex("\\{\\{.*?\\}\\}", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Script();
}
