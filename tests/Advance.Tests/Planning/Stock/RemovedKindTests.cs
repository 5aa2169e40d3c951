using Advance.Domain;
using Advance.Domain.Stocks;
using Advance.Planning;
using Advance.Reading;
using Advance.Reading.Files;

namespace Advance.Tests.Planning;

/// <summary>Nothing that the sample pulls because something else needs it may be forgotten without a trace.</summary>
public sealed class RemovedKindTests
{
    private static readonly Brief Sample = BriefReader.Read(new FolderDoor(Repository.Path("sample-gigs")), "harvest-supper/gig.yaml").Brief!;

    private static readonly Plan Whole = Planner.Plan(Sample);

    // Companions, joints, leads, adapters and cases: what nobody wrote.
    public static TheoryData<string> NobodyWrote =>
    [
        .. Whole.Stock.Lines.Where(line => line.Pieces.All(piece => piece.Why is not Need.AskedFor)).Select(line => line.Item),
    ];

    [Theory]
    [MemberData(nameof(NobodyWrote))]
    public void Without_a_kind_the_pull_list_or_a_finding_changes(string id)
    {
        var kinds = Sample.Stock.Kinds.Where(kind => kind.Key != id).ToDictionary(StringComparer.Ordinal);
        var without = Planner.Plan(Sample with { Stock = new Stock(kinds) });
        Assert.NotEqual(Text(Whole), Text(without));
    }

    [Theory]
    [MemberData(nameof(NobodyWrote))]
    public void Without_a_kind_it_is_missed_by_name_or_something_else_is_pulled_for_it(string id)
    {
        var kinds = Sample.Stock.Kinds.Where(kind => kind.Key != id).ToDictionary(StringComparer.Ordinal);
        var without = Planner.Plan(Sample with { Stock = new Stock(kinds) });
        var isMissed = without.Findings.Any(finding => finding.Says.ToString().Contains(id, StringComparison.Ordinal));
        var isReplaced = without.Findings.Count > Whole.Findings.Count || without.Stock.Lines.Any(line => Pulled(Whole, line.Item) < (line.Total.Value ?? 0));
        Assert.True(isMissed || isReplaced, $"Nobody misses {id}.");
    }

    private static int Pulled(Plan plan, string item) => plan.Stock.Lines.FirstOrDefault(line => line.Item == item)?.Total.Value ?? 0;

    private static string Text(Plan plan) => string.Join(
        '\n',
        [.. plan.Stock.Lines.Select(line => $"{line.Item} {line.Total.Value} {line.Kind is null}"), .. plan.Findings.Select(finding => $"{finding.Rule} {finding.Says}")]);
}
