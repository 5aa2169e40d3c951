using System.Globalization;
using Advance.Planning;
using Advance.Reading;
using Advance.Reading.Files;
using Advance.Sheets;
using Advance.Tests;
using UglyToad.PdfPig;

namespace Advance.Golden;

/// <summary>Rigging that nobody would hang, and somebody will write: a finding or a question and whole sheets, no crash and no number that is none.</summary>
public sealed class HostileRiggingTests
{
    private const string Gig = "rigging/hostile.yaml";

    private static readonly string[] Sheets = ["rigging-plot", "hoist-table", "point-loads", "workings", "pull-list"];

    [Theory]
    [InlineData("", "", "{along: 4.5 m, hoist: hoist-500, point: P2}", "")]
    [InlineData("rigging/cg-outside", "", "{along: 0.5 m, hoist: hoist-500, point: P1}, {along: 4 m, hoist: hoist-500, point: P2}", "{truss: T1, what: weight, weight: 300 kg, along: 8.8 m}")]
    [InlineData("rigging/not-judged", "weight hangs 20 m along it, and it is 9 m long", "{along: 0.5 m, hoist: hoist-500, point: P1}, {along: 8.5 m, hoist: hoist-500, point: P3}", "{truss: T1, what: weight, weight: 300 kg, along: 20 m}")]
    [InlineData("rigging/not-judged", "T1-1 and T1-2 hold it in one place", "{along: 4.5 m, hoist: hoist-500, point: P1}, {along: 4.5 m, hoist: hoist-500, point: P2}", "")]
    [InlineData("rigging/no-such-point", "P9", "{along: 0.5 m, hoist: hoist-500, point: P9}, {along: 8.5 m, hoist: hoist-500}", "")]
    [InlineData("rigging/not-judged", "the place of T1-2 is not known", "{along: 0.5 m, hoist: TBC, point: P1}, {along: TBC, hoist: hoist-500, point: TBC}", "")]
    [InlineData("rigging/not-judged", "where it is held is not known", "TBC", "")]
    [InlineData("", "", "{along: 0.5 m, hoist: hoist-500, point: P1}, {along: 8.5 m, hoist: hoist-500, point: P3}", "{truss: T1, what: weight, weight: 0 kg, along: 2 m}")]
    public void It_is_told_and_printed(string rule, string words, string picks, string loads) => Check(rule, words, Text("length: 9 m", picks == "TBC" ? picks : $"[{picks}]", loads));

    [Theory]
    [InlineData("length: TBC")]
    [InlineData("length: 0 m")]
    [InlineData("length: 1 mm")]
    [InlineData("length: 900 m")]
    public void So_is_a_truss_of_no_length_to_speak_of(string length) =>
        Check("", "", Text(length, "[{along: 0.5 m, hoist: hoist-500, point: P1}, {along: 8.5 m, hoist: hoist-500, point: P3}]", ""));

    [Fact]
    public void So_are_a_hundred_hoists_on_one_truss()
    {
        var picks = Enumerable.Range(0, 100).Select(pick => string.Create(CultureInfo.InvariantCulture, $"{{along: {0.3 + (0.3 * pick):0.0} m, hoist: hoist-500, point: P1}}"));
        Check("", "", Text("length: 30.6 m", $"[{string.Join(", ", picks)}]", ""));
    }

    private static string Text(string length, string picks, string loads) =>
        $"""
        gig: Nobody hangs this
        day: Sat 12 Sep 2026
        stock: ../shop-rigging/stock.yaml
        venue: ../shop-rigging/venue.yaml
        stage: [size: 10 x 6 m]
        rigging:
          trusses:
            T1:
              item: truss-3
              {length}
              place: SL 0 m US 2 m
              trim: 5 m above floor
              picks: {picks}
          loads: [{loads}]
        """.Replace("[size: 10 x 6 m]", "{size: 10 x 6 m, height: 0 m above floor}", StringComparison.Ordinal);

    private static void Check(string rule, string words, string gig)
    {
        var door = new EditedDoor(new FolderDoor(Repository.Path("tests", "Advance.Tests", "Planning", "Cases"))).With(Gig, gig);
        var read = BriefReader.Read(door, Gig);
        if (read.Brief is not { } brief)
        {
            Assert.Fail(string.Join('\n', read.Findings.Select(finding => $"{finding.At} {finding.Says}")));
            return;
        }

        var plan = Planner.Plan(brief);
        var said = plan.Findings.Select(finding => $"{finding.Rule} {finding.Says}").ToList();
        Assert.True(rule.Length == 0 || said.Exists(finding => finding.StartsWith(rule, StringComparison.Ordinal) && finding.Contains(words, StringComparison.Ordinal)), string.Join('\n', said));
        var package = PackageBuilder.Build(plan, PackageRequest.Everything with { Only = Sheets }, CompanyFolder.None);
        Assert.True(package.Files.Count > 0, string.Join('\n', package.Faults));
        using var pdf = PdfDocument.Open(package.Files.Single(file => file.Name == "package.pdf").Bytes.ToArray());
        Assert.DoesNotMatch("NaN|∞|Infinity", string.Concat(pdf.GetPages().Select(page => page.Text)));
    }
}
