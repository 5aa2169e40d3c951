using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>schedule/changeover-too-short</c></summary>
internal sealed class ChangeoverTooShort : Rule<ChangeoverTooShort.Case>
{
    public override string Name => "schedule/changeover-too-short";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "The gap between two acts is shorter than one comes off, the next goes on, and every line is patched and checked, with a tenth to spare.";

    public override string Why => "The first changeover that overruns moves every set behind it, up to the hour when the music must be off.";

    public override string Cures => "Lengthen the gap, set the next act behind the first, put it on rolling risers, or share more lines.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) => plan.Crew.Changeovers.Select(changeover => new Case(changeover));

    protected override Said Say(Case found) => new(
        $"{found.Changeover.From} to {found.Changeover.To}: {found.Needed} needed, {found.Gap} there.",
        Cures,
        $"{found.Needed} of {found.Gap}");

    internal sealed record Case(Changeover Changeover)
        : Judgement(Changeover.Address, Changeover.At, Changeover.Needed.AtMost(Changeover.Allowed), Changeover.Gap.RestsOn.With(Changeover.Needed.RestsOn))
    {
        public Duration Needed => Changeover.Needed.Value ?? Duration.Zero;

        public Duration Gap => Changeover.Gap.Value ?? Duration.Zero;
    }
}
