using Advance.Handbook;
using Advance.Planning;

namespace Advance.Tests.Planning.Rigging;

/// <summary>How far a hook may be off level: by hand, and against stepping along.</summary>
public sealed class LiftToleranceTests
{
    [Fact]
    public void Middle_of_three_hoists_by_hand()
    {
        // A hook raised by d at the middle of a span of 2 L is a load of 48 EI d / (2 L)³ more on it: 6 · 1.2e6 · d / 125 = 57 600 N/m.
        // Level 1.25 wL = 6250 N; 7402 N allowed: 20 mm. The outer ones lose half and are slack at 1875 / 28 800 = 65.1 mm.
        var truss = Trusses.Even(3, 5, 1000, 1.2e6);
        var middle = LiftTolerance.Of(truss, new([null, 7402, null], null, null, null))[1];
        Assert.InRange(middle.Raise!.Value, 0.020 - 2e-5, 0.020);
        Assert.Equal(1, middle.RaiseUse!.Share, 1e-3);
        Assert.Equal((LiftPart.Hoist, 1), (middle.RaiseUse.Part, middle.RaiseUse.Hoist));
        Assert.Equal("hoist 2 high by 20 mm", middle.RaiseUse.Case.Name);
        Assert.Null(middle.Drop);

        // More than it can ever carry: 10 kN, all of it.
        Assert.Null(LiftTolerance.Of(truss, new([null, 10_001, null], null, null, null))[1].Raise);
        Assert.InRange(LiftTolerance.Of(truss, new([null, 9999, null], null, null, null))[1].Raise!.Value, 0.0650, 0.06511);
    }

    [Fact]
    public void A_hogging_limit_counts_too()
    {
        // Over the middle: w L² / 8 = 3125 N m, and 144 000 N m more for each metre, half of 57 600 · 5; 4565 N m allowed: 10 mm.
        var middle = LiftTolerance.Of(Trusses.Even(3, 5, 1000, 1.2e6), new([null, null, null], null, 4565, null))[1];
        Assert.InRange(middle.Raise!.Value, 0.010 - 2e-5, 0.010);
        Assert.Equal((LiftPart.Hogging, 5), (middle.RaiseUse!.Part, middle.RaiseUse.At));
    }

    [Fact]
    public void What_is_over_level_already_tolerates_nothing()
    {
        var tolerances = LiftTolerance.Of(Trusses.Even(3, 5, 1000, 1.2e6), new([null, 6000, null], null, null, null));
        Assert.All(tolerances, tolerance => Assert.Equal((0, 0), (tolerance.Raise, tolerance.Drop)));
        Assert.All(tolerances, tolerance => Assert.Equal(0, tolerance.Least));
    }

    [Fact]
    public void What_holds_the_bound_tolerates_anything()
    {
        foreach (var truss in Trusses.Fixed(40))
        {
            var bound = LiftStudy.Of(truss, 0, 0)!.Bound;
            LiftCapacities capacities = new(
                [.. bound.Hoists.Select(hoist => (double?)(hoist.Most.Level * 1.001) + 0.01)],
                (bound.Sagging!.Value * 1.001) + 0.01,
                (-bound.Hogging!.Value * 1.001) + 0.01,
                null);
            Assert.All(LiftTolerance.Of(truss, capacities), tolerance => Assert.Null(tolerance.Least));
        }
    }

    [Fact]
    public void Stepping_along_finds_nothing_earlier_and_the_capacity_reached_there()
    {
        var found = 0;
        foreach (var truss in Trusses.Fixed(40))
        {
            var study = LiftStudy.Of(truss, 0, 0)!;
            var capacities = Capacities(study);
            foreach (var tolerance in LiftTolerance.Of(truss, capacities))
            {
                found += Step(truss, capacities, tolerance.Hoist, tolerance.Raise, 1) + Step(truss, capacities, tolerance.Hoist, tolerance.Drop, -1);
            }
        }

        Assert.True(found > 60, $"{found} tolerances to try");
    }

    [Fact]
    public void Moment_and_shear_together_inside_a_span_match_looking_everywhere()
    {
        foreach (var truss in Trusses.Fixed(60))
        {
            LiftCapacities capacities = new([.. truss.Hoists.Select(_ => (double?)null)], truss.Weight, truss.Weight / 2, truss.Weight);
            var state = LiftStudy.Of(truss, 0, 0)!.Rigid;
            var diagram = state.Diagram!;
            var looked = Enumerable.Range(0, 20_000).Max(step => Share(capacities, diagram, truss.Length * step / 20_000));
            var use = capacities.UseOf(state)!;
            Assert.InRange(use.Share, looked * (1 - 1e-9), (looked * 1.002) + 1e-6);
        }
    }

    private static double Share(LiftCapacities capacities, BeamDiagram diagram, double at)
    {
        var moment = diagram.MomentAt(at);
        return (Math.Abs(moment) / (moment > 0 ? capacities.Sagging!.Value : capacities.Hogging!.Value)) + (Math.Abs(diagram.ShearAt(at)) / capacities.Shear!.Value);
    }

    private static LiftCapacities Capacities(LiftStudy study) => new(
        [.. study.Level.Hoists.Select((hoist, index) => (double?)((1.3 * hoist.Most.Level) + (0.02 * study.Hung.Weight)))],
        (1.5 * study.Level.Sagging!.Value) + (0.05 * study.Hung.Weight),
        (-1.5 * study.Level.Hogging!.Value) + (0.05 * study.Hung.Weight),
        2.5 * Math.Abs(study.Level.Shear!.Value));

    private static int Step(HungBeam truss, LiftCapacities capacities, int hoist, double? by, int sign)
    {
        var last = by ?? Math.Min(0.3, truss.Length);
        for (var step = 0; step <= 40; step++)
        {
            Assert.True(by == 0 || UseAt(truss, capacities, hoist, sign * last * step / 40) <= 1 + 1e-6);
        }

        if (by is not > 0)
        {
            return 0;
        }

        Assert.True(UseAt(truss, capacities, hoist, sign * (last + 1.1e-5)) >= 1 - 1e-6);
        return 1;
    }

    private static double UseAt(HungBeam truss, LiftCapacities capacities, int hoist, double offset)
    {
        var offsets = new double[truss.Hoists.Count];
        offsets[hoist] = offset;
        var softness = truss.Hoists.Any(one => one.Stiffness is not null) ? new[] { false, true } : [false];
        return softness.Max(isSoft =>
        {
            var levels = new PullOnly(truss, isSoft).Solve(offsets)!.Levels;
            var state = new LiftState(LiftCase.Of(offsets, isSoft), levels, new BeamDiagram(new BeamLayout(truss.Beam, [.. truss.Hoists.Select(one => one.At)]), levels), null);
            return capacities.UseOf(state)!.Share;
        });
    }
}
