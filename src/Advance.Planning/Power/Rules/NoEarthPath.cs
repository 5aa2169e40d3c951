using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Stocks;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary><c>power/no-earth-path</c></summary>
internal sealed class NoEarthPath : Rule<NoEarthPath.Case>
{
    public override string Name => "power/no-earth-path";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "A mains lead lies between connectors that have an earth contact, and has too few cores for an earth.";

    public override string Why => "Everything behind it is without earth: a fault puts mains on the case, and nothing opens.";

    public override string Cures => "Take that lead out and use one with an earth core; test it end to end.";

    public override Publication Source { get; } = new("BS 7671: a protective conductor runs with every circuit", "2018 + A2:2022", "411.3.1.1", Standing.FromMemory);

    // A single core is one of a set; a lead that nobody described is not judged; a neutral that is missing is told by another rule.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from run in plan.Cables.Runs
        where run.Link.Carries == "mains"
        from lead in run.Leads
        where lead.Cable is { Cores: > 1 } && Least(lead.Cable) is not null
        group new Case(run, lead, lead.Cable!.Cores < Least(lead.Cable) ? Verdict.Fails : Verdict.Holds) by lead.Id into kind
        select kind.First();

    protected override Said Say(Case found) => new(
        $"{found.Lead.Name} has {found.Lead.Cable!.Cores} cores, and with an earth it needs {Least(found.Lead.Cable)!.Value}; first on {found.Run.Label}.",
        "Use a lead with an earth core.",
        $"{found.Lead.Cable.Cores} of {Least(found.Lead.Cable)!.Value}");

    // Lines and earth, and with one line its neutral.
    private static int? Least(Cable cable) =>
        (Mating.PlugOf(cable) ?? Mating.SocketOf(cable)) is { } end && MainsConnectors.Find(end) is { } connector ? connector.Lines + 1 + (connector.Lines == 1 ? 1 : 0) : null;

    internal sealed record Case(Run Run, Kind Lead, Verdict Verdict) : Judgement(Address.Of("power") / "earth-core" / Lead.Id, Run.Link.At, Verdict, Doubts.None);
}
