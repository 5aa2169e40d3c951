using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>cable/network-too-long</c></summary>
internal sealed class NetworkTooLong : Rule<NetworkTooLong.Case>
{
    private static readonly Length Most = Length.FromMeters(100);

    public override string Name => "cable/network-too-long";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A network run on copper is longer than a channel may be: 90 m and 10 m of cords.";

    public override string Why => "Beyond that the link drops out or falls back to a slower rate, often only when the hall is full.";

    public override string Cures => "Use fibre, put a switch half-way, or move one of the ends.";

    public override Publication Source { get; } = new("ANSI/TIA-568, channel of balanced cabling", "", "90 m permanent link and 10 m of cords", Standing.Read);

    protected override IEnumerable<Case> Cases(Plan plan) =>
        plan.Cables.Runs.Where(run => run.Link.Carries == "network" && IsCopper(run)).Select(CaseOf).OfType<Case>();

    protected override Said Say(Case found) => new(
        $"{found.Run.Label}: {found.Long.Value!.Value} of network on copper, {Most} at most.",
        "Use fibre, or put a switch half-way.",
        $"{found.Long.Value!.Value}, {Most} at most");

    private static bool IsCopper(Run run) => !run.Leads.Any(lead =>
        $"{lead.Cable!.Section} {lead.Cable.From} {lead.Cable.To}".Contains("fibre", StringComparison.OrdinalIgnoreCase));

    // Where nobody knows how long it is, the end that is unknown was said already.
    private static Case? CaseOf(Run run)
    {
        var length = run.MadeUp.Value is null ? run.Needed : run.MadeUp;
        return length.Value is null ? null : new Case(run, length, length.AtMost(new Figure<Length>(Most, Domain.Facts.Doubts.None, Reason.Derived.It)));
    }

    internal sealed record Case(Run Run, Figure<Length> Long, Verdict Verdict) : Judgement(Run.Address, Run.Link.At, Verdict, Long.RestsOn);
}
