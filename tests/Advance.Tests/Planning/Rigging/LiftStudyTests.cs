using Advance.Planning;
using CsCheck;

namespace Advance.Tests.Planning.Rigging;

/// <summary>Trusses on hoists, level, uneven and with a hoist gone. Figures of equal spans are those of beam tables; others by hand in a comment.</summary>
public sealed class LiftStudyTests
{
    [Theory]
    [InlineData(3, "0.375 1.25 0.375")]
    [InlineData(4, "0.4 1.1 1.1 0.4")]
    [InlineData(5, "0.39286 1.14286 0.92857 1.14286 0.39286")]
    public void Level_on_chains_that_do_not_give_is_the_table_of_equal_spans(int hoists, string reactions)
    {
        var study = LiftStudy.Of(Trusses.Even(hoists), 0, 0)!;
        Compare(reactions, study.Rigid.Levels, 1e-5);
        Assert.Null(study.Soft);
        Assert.Empty(study.Rigid.Slack);
    }

    [Fact]
    public void Chains_that_give_load_the_outer_hoists_of_a_stiff_truss_more()
    {
        // Spans of 5 m, EI 1200 kN m², 250 kN/m: 0.45, 1.10, 0.45 of wL instead of 0.375, 1.25, 0.375.
        var study = LiftStudy.Of(Trusses.Even(3, 5, 1000, 1.2e6, 250e3), 0, 0)!;
        Compare("0.45 1.10 0.45", study.Soft!.Levels.Select(level => level / 5000), 0.005);
        Compare("0.375 1.25 0.375", study.Rigid.Levels.Select(level => level / 5000), 1e-6);
        Assert.Equal("level, points give", study.Level.Hoists[0].Most.Case.Name);
        Assert.Equal("level", study.Level.Hoists[1].Most.Case.Name);
        Assert.True(study.Soft.Solution!.Lowest.Value < study.Rigid.Solution!.Lowest.Value);
    }

    [Fact]
    public void Four_hoists_and_three_equal_spans()
    {
        var study = LiftStudy.Of(Trusses.Even(4), 0, 0)!;
        Assert.Equal(1.10, study.Level.Hoists[1].Most.Level, 1e-9);
        Assert.Equal(0.1, -study.Level.Hogging!.Value, 1e-9);

        // Spans of 2 and 1: M = (8 + 1) / 24, the inner hoist 2.0625.
        Assert.Equal(2.0625, study.Gone.Hoists[2].Most.Level, 1e-9);
        Assert.Equal("hoist 2 gone", study.Gone.Hoists[2].Most.Case.Name);

        // Outer gone: an overhang of one span, 0.5 w L².
        Assert.Equal(-0.5, study.Gone.Hogging!.Value, 1e-9);
        Assert.Equal("hoist 1 gone", study.Gone.Hogging.Case.Name);
        Assert.Equal(1, study.Gone.Hogging.At, 1e-9);

        // Alternate two slack: 3² / (2 · 2).
        Assert.Equal(2.25, study.Bound.Hoists[2].Most.Level, 1e-9);
        Assert.Equal("all on hoists 1 and 3", study.Bound.Hoists[2].Most.Case.Name);
        Assert.Empty(study.TipsWithout);
    }

    [Fact]
    public void Raising_alternate_hoists_far_enough_reaches_the_bound()
    {
        var study = LiftStudy.Of(Trusses.Even(4), 1, 1)!;
        Assert.Equal(2.25, study.AtRest.Hoists[1].Most.Level, 1e-9);
        Assert.Equal(0, study.AtRest.Hoists[1].Least.Level);
        Assert.Contains("high", study.AtRest.Hoists[1].Most.Case.Name, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(3, "243.75 812.5 243.75")]
    [InlineData(4, "173.33 476.67 476.67 173.33")]
    public void Truss_of_1300_kilograms(int hoists, string kilograms)
    {
        // Worked example of a page on lifting with more than two hoists: 500 kg hoists, of which the middle one of three is over its rating.
        var truss = Trusses.Even(hoists, 12.0 / (hoists - 1), 1300 / 12.0, 1e6);
        LiftCapacities capacities = new([.. Enumerable.Repeat<double?>(500, hoists)], null, null, null);
        var study = LiftStudy.Of(truss, 0, 0, capacities)!;
        Compare(kilograms, study.Rigid.Levels, 0.01);
        Assert.Equal(hoists == 3, study.Level.Use!.Share > 1);
        Assert.Equal(LiftPart.Hoist, study.Level.Use.Part);
        Assert.Equal(hoists == 3, LiftTolerance.Of(truss, capacities)[1].Raise == 0);
    }

    [Fact]
    public void The_bound_holds_for_every_unevenness_and_is_the_formula()
    {
        foreach (var (truss, far) in Trusses.Fixed(60).Zip(Trusses.Values(Gen.Double[0.001, 0.2], 60)))
        {
            var study = LiftStudy.Of(truss, far, far)!;
            for (var hoist = 0; hoist < truss.Hoists.Count; hoist++)
            {
                Assert.Equal(LiftStudy.MostOf(truss, hoist), study.Bound.Hoists[hoist].Most.Level, 1e-9 * truss.Weight);
                Assert.True(study.AtRest.Hoists[hoist].Most.Level <= study.Bound.Hoists[hoist].Most.Level + (1e-6 * truss.Weight));
                Assert.True(study.AtRest.Hoists[hoist].Least.Level >= 0);
            }

            Within(study.AtRest, study.Bound, truss.Weight);
            Within(study.Level, study.AtRest, truss.Weight);
        }
    }

    [Fact]
    public void Loads_of_each_case_sum_to_the_weight()
    {
        foreach (var truss in Trusses.Fixed(40))
        {
            var study = LiftStudy.Of(truss, 0.01, 0.05)!;
            var states = new[] { study.Level, study.AtRest, study.Moving, study.Gone, study.Bound }.SelectMany(envelope => envelope.States);
            Assert.All(states, state =>
            {
                Assert.Equal(truss.Weight, state.Levels.Sum(), 1e-6 * truss.Weight);
                Assert.Equal(state.Tips, state.Case.Gone is { } gone && !Without(truss, gone));
            });
            Assert.All(study.Bound.States, state => Assert.Equal(0, state.Diagram!.MomentAfter(state.Diagram.Layout.At.Count - 1), 1e-6 * truss.Weight));
        }
    }

    [Fact]
    public void Extremes_lie_on_the_curves()
    {
        foreach (var truss in Trusses.Fixed(40))
        {
            var envelope = LiftStudy.Of(truss, 0.02, 0.02)!.AtRest;
            Assert.InRange(envelope.Curve.Max(point => point.MostMoment), 0.9 * envelope.Sagging!.Value, envelope.Sagging.Value + 1e-6);
            Assert.Equal(envelope.Hogging!.Value, envelope.Curve.Min(point => point.LeastMoment), 1e-6);
            Assert.Equal(Math.Abs(envelope.Shear!.Value), envelope.Curve.Max(point => Math.Max(point.MostShear, -point.LeastShear)), 1e-6);
            Assert.All(envelope.Curve, point => Assert.True(point.LeastMoment <= point.MostMoment && point.LeastShear <= point.MostShear));
        }
    }

    [Fact]
    public void Two_hoists_share_by_levers_however_uneven_and_without_one_the_truss_tips()
    {
        // 1200 N at 3 m of 12: 900 and 300.
        var truss = new HungBeam(12, 1e6, null, [], [new HungLoad(3, 1200, 0.2)], [new(0), new(12)]);
        var study = LiftStudy.Of(truss, 0.1, 0.5)!;
        Compare("900 300", study.Moving.Hoists.Select(hoist => hoist.Most.Level), 1e-6);
        Compare("900 300", study.Bound.Hoists.Select(hoist => hoist.Most.Level), 1e-6);
        Assert.Equal([0, 1], study.TipsWithout);
        Compare("1200 1200", study.Gone.Hoists.Select(hoist => hoist.Most.Level), 1e-6);
        Assert.Null(study.Gone.Sagging);
        Assert.Equal(2700, study.Level.Sagging!.Value, 1e-6);
        Assert.Equal(0.2, truss.Across, 1e-12);
        Assert.Equal(Math.PI / 4, truss.Roll(0.2), 1e-9);
        Assert.Equal(1200, truss.LargestNodeLoad.Value);
    }

    [Fact]
    public void One_hoist_holds_a_truss_only_above_its_centre_of_gravity()
    {
        var truss = new HungBeam(4, 1e6, null, [new HungWeight(0, 4, 100)], [], [new(2)]);
        var study = LiftStudy.Of(truss, 0.1, 0.1)!;
        Compare("400", study.AtRest.Hoists.Select(hoist => hoist.Most.Level), 1e-9);
        Assert.Equal(-200, study.Level.Hogging!.Value, 1e-9);
        Assert.Null(LiftStudy.Of(new HungBeam(4, 1e6, null, [new HungWeight(0, 4, 100)], [], [new(1.5)]), 0, 0));
    }

    [Theory]
    [InlineData("hoist 1 high by 20 mm", new[] { 0.02, 0, 0 })]
    [InlineData("hoists 1, 3 high and hoist 2 low by 12.5 mm", new[] { 0.0125, -0.0125, 0.0125 })]
    [InlineData("level", new double[] { 0, 0, 0 })]
    public void Cases_have_names(string name, double[] offsets) => Assert.Equal(name, LiftCase.Of(offsets, isSoft: false).Name);

    [Fact]
    public void What_cannot_be_is_refused()
    {
        Assert.Throws<ArgumentException>(() => new HungBeam(4, 1e6, null, [], [], [new(2)]));
        Assert.Throws<ArgumentException>(() => new HungBeam(4, 1e6, null, [new HungWeight(0, 4, 1)], [], [new(2), new(2)]));
        Assert.Throws<ArgumentException>(() => new HungBeam(4, 1e6, null, [new HungWeight(0, 4, 1)], [], []));
        Assert.Throws<ArgumentException>(() => new HungBeam(4, 1e6, null, [new HungWeight(0, 4, 1)], [], [new(0), new(2, 0)]));
        Assert.Throws<ArgumentException>(() => new HungBeam(4, 1e6, null, [], [new HungLoad(1, -1)], [new(0), new(2)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => new HungBeam(4, 1e6, null, [], [new HungLoad(5, 1)], [new(0), new(2)]));
    }

    private static bool Without(HungBeam truss, int gone)
    {
        var left = truss.Hoists.Where((_, hoist) => hoist != gone).ToList();
        return left.Count > 0 && left[0].At <= truss.Centre + 1e-9 && left[^1].At >= truss.Centre - 1e-9;
    }

    private static void Within(LiftEnvelope inner, LiftEnvelope outer, double weight)
    {
        Assert.True(inner.Sagging!.Value <= outer.Sagging!.Value + (1e-6 * weight));
        Assert.True(inner.Hogging!.Value >= outer.Hogging!.Value - (1e-6 * weight));
        Assert.True(Math.Abs(inner.Shear!.Value) <= Math.Abs(outer.Shear!.Value) + (1e-6 * weight));
        Assert.All(inner.Curve.Zip(outer.Curve), pair => Assert.True(pair.First.MostMoment <= pair.Second.MostMoment + (1e-6 * weight)));
    }

    private static void Compare(string expected, IEnumerable<double> actual, double tolerance) =>
        Assert.All(expected.Split(' ').Select(double.Parse).Zip(actual.ToList()), pair => Assert.Equal(pair.First, pair.Second, tolerance));
}
