using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>cable/end-unknown</c></summary>
internal sealed class EndUnknown : Rule<EndUnknown.Case>
{
    public override string Name => "cable/end-unknown";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "Nobody knows where an end of a lead is, or what plugs in there, so that no lead can be picked for it.";

    public override string Why => "A lead of unknown length is not on the van.";

    public override string Cures => "Write the place of the thing, or give it an item whose connectors the stock knows.";

    public override Publication Source => Publication.Arithmetic;

    // A device that many leads go to is one cause; what only one goes to is named together with its like.
    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var ends = plan.Cables.Runs.SelectMany(run => run.Links.SelectMany(link => new[] { new End(run, link, link.From), new End(run, link, link.To) })).ToList();
        var shared = ends.GroupBy(end => end.At.Port.Device, StringComparer.Ordinal).Where(of => of.Select(end => end.Run).Distinct().Count() > 1).Select(of => of.Key).ToHashSet(StringComparer.Ordinal);
        return ends
            .GroupBy(end => (Lack: LackOf(end.At), Device: shared.Contains(end.At.Port.Device) ? end.At.Port.Device : "", end.Link.Act))
            .Select(group => CaseOf(group.Key.Lack, [.. group]));
    }

    protected override Said Say(Case found)
    {
        var (names, runs) = (RunNames.Of(found.Ends.Select(end => end.At.Port.Device)), RunNames.Count(found.Ends.Select(end => end.Run).Distinct().Count()));
        var lead = RunNames.Of(found.Ends.Select(end => end.Run.Label));
        return found.Lack == Lack.Place
            ? new(
                $"{names}: nobody knows where, so {runs} ({lead}) cannot be measured.",
                "Write the place.",
                $"{runs}, place unknown")
            : new(
                $"{names}: nobody knows what plugs in, so no lead can be picked for {runs} ({lead}).",
                "Give it an item whose connectors the stock knows.",
                $"{runs}, connector unknown");
    }

    private static Lack LackOf(LinkEnd end) => end.Spot is null ? Lack.Place : end.Connector.Length == 0 ? Lack.Connector : Lack.None;

    private static Case CaseOf(Lack lack, IReadOnlyList<End> ends)
    {
        var first = ends.MinBy(end => end.Link.At)!;
        var doubts = ends.Aggregate(Doubts.None, (sum, end) => sum.With(end.Link.RestsOn));
        return new Case(lack, ends, Address.Of("cable") / first.At.Port.Device, first.Link.At, lack == Lack.None ? Verdict.Holds : Verdict.CannotBeJudged, doubts);
    }

    internal enum Lack
    {
        None,
        Place,
        Connector,
    }

    internal sealed record End(Run Run, Link Link, LinkEnd At);

    internal sealed record Case(Lack Lack, IReadOnlyList<End> Ends, Address Where, Mark At, Verdict Verdict, Doubts RestsOn)
        : Judgement(Where, At, Verdict, RestsOn);
}
