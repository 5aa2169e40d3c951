using System.Globalization;
using System.Text.RegularExpressions;
using Advance.Domain.Findings;
using Advance.Planning;
using Advance.Reading;
using Advance.Reading.Files;

namespace Advance.Tests.Planning;

/// <summary>
/// A gig fragment whose expected findings stand in it as comments: <c># expect stop patch/no-port-left</c> on the line that the finding
/// points at, or with <c>at +2</c> where that line is inside a block and so many lines further down. Rules under test are those of the
/// folder; what other families say of a fragment does not matter to it.
/// </summary>
internal sealed partial record RuleCase(string File, string Rule)
{
    public static readonly string Folder = Repository.Path("tests", "Advance.Tests", "Planning", "Cases");

    /// <summary>All cases, by path relative to the folder.</summary>
    public static IEnumerable<RuleCase> All =>
        Directory.EnumerateFiles(Folder, "*.yaml", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(Folder, file).Replace('\\', '/'))
            .Where(file => file.Count(letter => letter == '/') == 2)
            .Order(StringComparer.Ordinal)
            .Select(file => new RuleCase(file, Path.GetDirectoryName(file)!.Replace('\\', '/')));

    /// <summary>What its comments expect: line, severity, rule.</summary>
    public IReadOnlyList<string> Expected
    {
        get
        {
            var lines = System.IO.File.ReadAllLines(Path.Combine(Folder, File));
            return [.. lines.SelectMany((line, index) => Expectation().Matches(line).Select(match => Of(match, index + 1))).Order(StringComparer.Ordinal)];
        }
    }

    /// <summary>What the rule says of it.</summary>
    public IReadOnlyList<string> Actual()
    {
        var read = BriefReader.Read(new FolderDoor(Folder), File);
        Assert.True(read.Brief is not null, string.Join("\n", read.Findings.Select(finding => $"{finding.At} {finding.Says}")));
        var findings = Planner.Plan(read.Brief).Findings.Where(finding => finding.Rule == Rule);
        return [.. findings.Select(finding => Line(finding.At.Line, Word(finding), finding.Rule)).Order(StringComparer.Ordinal)];
    }

    private static string Of(Match match, int line)
    {
        var down = match.Groups["down"] is { Success: true } more ? int.Parse(more.Value, CultureInfo.InvariantCulture) : 0;
        return Line(line + down, match.Groups["word"].Value, match.Groups["rule"].Value);
    }

    private static string Line(int line, string word, string rule) => $"line {line:000}: {word} {rule}";

    private static string Word(Finding finding) => (finding.Accepted, finding.Severity) switch
    {
        ({ }, _) => "accepted",
        (null, Severity.Stop) => "stop",
        (null, Severity.Concern) => "concern",
        _ => "note",
    };

    [GeneratedRegex(@"# expect (?<word>stop|concern|note|accepted) (?<rule>[a-z0-9/-]+)(?: at \+(?<down>\d+))?")]
    private static partial Regex Expectation();
}
