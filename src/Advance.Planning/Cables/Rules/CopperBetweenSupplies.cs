using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>cable/copper-between-supplies</c></summary>
internal sealed class CopperBetweenSupplies : Rule<CopperBetweenSupplies.Case>
{
    public override string Name => "cable/copper-between-supplies";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "An analogue line joins two units that are fed from different supplies.";

    public override string Why => "The screen of the line joins both earths: it hums at best, and a fault current runs through it at worst.";

    public override string Cures => "Feed both from one supply, put a transformer or a network into the line, or have the electrician join the earths.";

    public override Publication Source { get; } = new("BS 7909 and BS 7671, 411.3.1.2: parts in reach of each other have one earth", "", "", Standing.FromMemory);

    // What has no mains, such as a microphone, joins nothing.
    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var feeds = plan.Links.Where(link => link.Carries == "mains").ToLookup(link => link.To.Port.Device, StringComparer.Ordinal);
        return plan.Links.Where(link => link.Carries is "mic-line" or "line")
            .GroupBy(link => (From: link.From.Port.Device, To: link.To.Port.Device))
            .Select(lines => CaseOf([.. lines], SupplyOf(lines.Key.From, feeds), SupplyOf(lines.Key.To, feeds)))
            .OfType<Case>();
    }

    protected override Said Say(Case found) => new(
        $"{found.Lines[0].From.Port.Device} on {found.From} and {found.Lines[0].To.Port.Device} on {found.To} are joined by {found.Lines.Count} analogue {(found.Lines.Count == 1 ? "line" : "lines")}.",
        "Feed both from one supply, put a transformer into the line, or have the electrician join the earths.",
        $"{found.From} and {found.To}");

    private static Case? CaseOf(IReadOnlyList<Link> lines, string? from, string? to) =>
        from is null || to is null ? null : new Case(lines, from, to, from == to ? Verdict.Holds : Verdict.Fails);

    // From lead to lead back to what nothing feeds; null where no mains goes to it at all.
    private static string? SupplyOf(string device, ILookup<string, Link> feeds)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var supply = device;
        while (seen.Add(supply) && feeds[supply].FirstOrDefault() is { } feed)
        {
            supply = feed.From.Port.Device;
        }

        return supply == device ? null : supply;
    }

    internal sealed record Case(IReadOnlyList<Link> Lines, string From, string To, Verdict Verdict)
        : Judgement(Address.Of("cable") / Lines[0].To.Port.Device / Lines[0].From.Port.Device, Lines[0].At, Verdict, Lines.Aggregate(Doubts.None, (sum, line) => sum.With(line.RestsOn)));
}
