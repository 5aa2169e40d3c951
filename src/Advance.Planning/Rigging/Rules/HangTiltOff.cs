using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>rigging/hang-tilt-off</c></summary>
internal sealed class HangTiltOff : Rule<HangTiltOff.Case>
{
    public override string Name => "rigging/hang-tilt-off";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "On the one hole that it hangs by a hang tilts other than it is to.";

    public override string Why => "It throws over the heads, or onto the first rows.";

    public override string Cures => "The hole that comes nearest, another splay, a second pick, or a pull-back.";

    public override Publication Source => Handbook.Statics.Equilibrium;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        from hang in plan.Rigging.Hangs
        where hang.Picks.Count == 1 && hang.Tilt.Value is not null && hang.Placed.Flown.Tilt is { IsKnown: true }
        select new Case(hang, plan.Brief.Company.Policies.Rigging.TiltTolerance.Degrees);

    protected override Said Say(Case found)
    {
        var (hang, hole) = (found.Hang, found.Hang.Picks[0].Hole!.Name);
        var best = hang.Holes.Where(one => one.Tilt.Value is not null).MinBy(one => Math.Abs(one.Tilt.Value!.Value.Degrees - hang.Placed.Flown.Tilt!.Value.Value.Degrees))!;
        return new(
            $"{hang.Stack.Stack.Name}: on hole {hole} it hangs {TiltWords.Of(hang.Tilt.Value)}, and {TiltWords.Of(hang.Placed.Flown.Tilt!.Value.Value)} is asked for.",
            best.Hole.Name == hole ? "No hole comes nearer: another splay, a second pick, or a pull-back." : $"Hole {best.Hole.Name}: {TiltWords.Of(best.Tilt.Value)}.",
            $"{TiltWords.Of(hang.Tilt.Value)}");
    }

    internal sealed record Case(HangPlan Hang, double Tolerance) : Judgement(
        Hang.Written / "tilt",
        Hang.Placed.Hang.At,
        Math.Abs(Hang.Tilt.Value!.Value.Degrees - Hang.Placed.Flown.Tilt!.Value.Value.Degrees) <= Tolerance + 1e-9 ? Verdict.Holds : Verdict.Fails,
        Hang.Tilt.RestsOn.With(Doubts.Of(Hang.Placed.Flown.Tilt?.Doubt)));
}
