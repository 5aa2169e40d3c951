using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>rigging/hang-pick-light</c></summary>
internal sealed class HangPickLight : Rule<HangPickLight.Case>
{
    public override string Name => "rigging/hang-pick-light";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "One of two picks of a hang carries hardly anything of it.";

    public override string Why => "A box a little heavier, or a hook a little off, and it goes slack with a snatch.";

    public override string Cures => "Another hole, another tilt, or a pull-back.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        from hang in plan.Rigging.Hangs
        where hang.Picks.Count == 2 && hang.State is not null && hang.Weight.Value is not null
        from pick in hang.Picks
        where pick.Pick.Level.Value is { Kilograms: > 0 }
        select new Case(hang, pick, plan.Brief.Company.Policies.Rigging.LeastPick);

    protected override Said Say(Case found) => new(
        $"{found.Pick.Pick.Name} carries {found.Pick.Pick.Level.Value!.Value} of {found.Hang.Weight.Value!.Value} at {TiltWords.Of(found.Hang.Tilt.Value)}.",
        "Another hole, another tilt, or a pull-back.",
        $"{found.Pick.Pick.Level.Value!.Value} of {found.Hang.Weight.Value!.Value}");

    private static Verdict Judge(HangPlan hang, HangPickPlan pick, double least) =>
        pick.Pick.Level.Value!.Value.Kilograms >= least / 100 * hang.Weight.Value!.Value.Kilograms ? Verdict.Holds : Verdict.Fails;

    internal sealed record Case(HangPlan Hang, HangPickPlan Pick, double Least)
        : Judgement(Pick.Pick.Address / "light", Pick.Pick.Placed.Pick.At, Judge(Hang, Pick, Least), Pick.Pick.Level.RestsOn);
}
