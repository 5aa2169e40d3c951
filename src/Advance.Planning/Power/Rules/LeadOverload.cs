using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>power/lead-overload</c></summary>
internal sealed class LeadOverload : Rule<LeadOverload.Case>
{
    public override string Name => "power/lead-overload";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "A mains lead is rated for less than the device that protects it.";

    public override string Why => "The lead is then the fuse.";

    public override string Cures => "Take a lead of a larger section, one with a fuse in its plug, or a circuit with a smaller device.";

    public override Publication Source { get; } = new("IEC 60364-4-43: the device protects the cable", "", "433.1", Standing.FromMemory);

    // One case for a kind of lead, where it lies worst. Where its connector carries less than the lead, another rule tells.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        ProtectedLead.Of(plan).Where(lead => !lead.IsForItsConnector).Select(lead => new Case(lead))
            .GroupBy(found => found.Lead.Lead.Id, StringComparer.Ordinal)
            .Select(group => group.OrderByDescending(found => Rank(found.Verdict)).ThenBy(found => found.Where).First());

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new($"{found.Label}: nobody knows what {found.Lead.Lead.Id} may carry.", "Write its rating in the stock.", $"unknown")
        : new(
            $"{found.Label}: {found.Lead.Lead.Id} is good for {found.Lead.Rating.Value!.Value} behind {found.Lead.Limit.Value!.Value} ({found.Lead.Behind}).",
            "Take a lead of a larger section, one with a fuse in its plug, or a circuit with a smaller device.",
            $"{found.Lead.Rating.Value!.Value} behind {found.Lead.Limit.Value!.Value}");

    private static int Rank(Verdict verdict) => verdict switch
    {
        Verdict.Fails => 2,
        Verdict.CannotBeJudged => 1,
        _ => 0,
    };

    internal sealed record Case(ProtectedLead Lead)
        : Judgement(Address.Of("power") / Lead.Use.Run.Label / Lead.Lead.Id, Lead.Use.At, Lead.Limit.AtMost(Lead.Rating), Lead.Limit.RestsOn.With(Lead.Rating.RestsOn))
    {
        public string Label => Lead.Use.Run.Label;
    }
}
