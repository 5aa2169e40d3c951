using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>rigging/hang-pick-slack</c></summary>
internal sealed class HangPickSlack : Rule<HangPickSlack.Case>
{
    public override string Name => "rigging/hang-pick-slack";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "At the tilt that is asked for one of two picks would have to push: the centre of gravity of the hang is not between them.";

    public override string Why => "That chain goes slack, all hangs on the other, and the hang swings to the tilt it has on that one alone.";

    public override string Cures => "Another hole, another tilt, or a pull-back.";

    public override Publication Source => Handbook.Statics.Equilibrium;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        from hang in plan.Rigging.Hangs
        where hang.Picks.Count == 2 && hang.State is not null
        from pick in hang.Picks
        where pick.Pick.Level.Value is not null
        select new Case(hang, pick);

    protected override Said Say(Case found) => new(
        $"{found.Pick.Pick.Name} on hole {found.Pick.Hole!.Name} carries nothing at {TiltWords.Of(found.Hang.Tilt.Value!.Value)}: both picks carry from {TiltWords.Of(found.Hang.LeastTilt.Value)} to {TiltWords.Of(found.Hang.MostTilt.Value)}.",
        "Another hole, another tilt, or a pull-back.",
        $"{found.Pick.Pick.Level.Value!.Value}");

    internal sealed record Case(HangPlan Hang, HangPickPlan Pick)
        : Judgement(Pick.Pick.Address / "slack", Pick.Pick.Placed.Pick.At, Pick.Pick.Level.Value!.Value.Kilograms > 0 ? Verdict.Holds : Verdict.Fails, Pick.Pick.Level.RestsOn);
}
