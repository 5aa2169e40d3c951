using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>sound/two-signals</c></summary>
internal sealed class TwoSignals : Rule<TwoSignals.Case>
{
    public override string Name => "sound/two-signals";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "Two outputs are connected to one input.";

    public override string Why => "Two outputs on one wire drive each other, and at best one of them is heard.";

    public override string Cures => "Leave one of them out, or sum them in the desk or the processor.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) => plan.Sound.Links.Concat(plan.Drive.Links)
        .Where(link => Signals.IsSound(link.Carries))
        .GroupBy(link => link.To.Port)
        .Select(links => new Case([.. links]));

    protected override Said Say(Case found)
    {
        var ports = found.Links.Select(link => link.From.Port.ToString()).Distinct(StringComparer.Ordinal);
        return new(
            $"{found.Links[0].To.Port.ToString()}: fed by {string.Join(" and by ", ports)}; one output may.",
            "Leave all but one of them out.",
            $"{string.Join(", ", ports)}");
    }

    internal sealed record Case(IReadOnlyList<Link> Links) : Judgement(
        Links[^1].Address,
        Links[^1].At,
        Links.Select(link => link.From.Port).Distinct().Skip(1).Any() ? Verdict.Fails : Verdict.Holds,
        Links[^1].RestsOn);
}
