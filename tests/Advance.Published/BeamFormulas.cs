using Advance.Handbook;

namespace Advance.Published;

/// <summary>
/// Closed-form cases of beams as handbooks and pages print them: AISC table 3-23 and those who cite it, CISC handbook diagram 24, Civil Engineering
/// Formulas case 11, engineering pages on continuous beams; the single load on a simple beam from memory (AISC case 8). Where a page prints a slip
/// (the third reaction of two unequal spans with the other span's load, 0.805 for 0.0805) the right value is asked and the wrong one refused.
/// </summary>
public sealed class BeamFormulas
{
    [Theory]
    [InlineData(6, 3)]
    [InlineData(2.5, 0.7)]
    public void Simple_beam_evenly_loaded(double l, double w)
    {
        const double ei = 40;
        var solved = ContinuousBeam.Solve(new Beam(l, ei, null, [BeamLoad.Uniform(0, l, w)]), new(0), new BeamSupport(l));
        BeamSums.Reactions(solved, 1e-9, w * l / 2, w * l / 2);
        Near.Within(w * l * l / 8, solved.Diagram.Sagging.Value, 1e-9);
        Near.Within(l / 2, solved.Diagram.Sagging.At, 1e-9);
        Near.Within(-5 * w * Math.Pow(l, 4) / (384 * ei), solved.Lowest.Value, 1e-9);
        Near.Within(l / 2, solved.Lowest.At, 1e-9);
    }

    [Fact]
    public void Shear_adds_w_l_squared_over_8_GA_to_the_sag_of_a_simple_beam_from_memory()
    {
        var solved = ContinuousBeam.Solve(new Beam(6, 40, 25, [BeamLoad.Uniform(0, 6, 3)]), new(0), new BeamSupport(6));
        Near.Within(-(5 * 3 * Math.Pow(6, 4) / (384 * 40)) - (3.0 * 36 / (8 * 25)), solved.HeightAt(3), 1e-9);
    }

    [Fact]
    public void Cantilever_with_a_load_at_its_end_sinks_by_P_l_cubed_over_3_EI_and_by_P_l_over_GA_from_memory()
    {
        var solved = ContinuousBeam.Solve(new Beam(2, 40, 25, [BeamLoad.Point(2, 3)]), new BeamSupport(0) { IsClamped = true });
        Near.Within(-(3 * 8 / (3.0 * 40)) - (3 * 2 / 25.0), solved.HeightAt(2), 1e-9);
        Near.Within(-6, solved.Diagram.Hogging.Value, 1e-9);
    }

    [Fact]
    public void Simple_beam_with_one_load()
    {
        var (l, a, p) = (7.0, 2.0, 5.0);
        var solved = BeamSums.On([0, l], BeamLoad.Point(a, p));
        BeamSums.Reactions(solved, 1e-9, p * (l - a) / l, p * a / l);
        Near.Within(p * a * (l - a) / l, solved.Diagram.Sagging.Value, 1e-9);
    }

    [Fact]
    public void Simple_beam_with_two_equal_loads_as_far_from_its_ends()
    {
        var solved = BeamSums.On([0, 10], BeamLoad.Point(3, 4), BeamLoad.Point(7, 4));
        BeamSums.Reactions(solved, 1e-9, 4, 4);
        Near.Within(12, solved.Diagram.Sagging.Value, 1e-9);
        Near.Within(0, solved.Diagram.ShearAt(5), 1e-9);
    }

    [Theory]
    [InlineData(8, 2, 3)]
    [InlineData(10, 3, 10)]
    public void Overhang_at_one_end(double l, double a, double w)
    {
        var solved = BeamSums.On([0, l], BeamLoad.Uniform(0, l + a, w));
        BeamSums.Reactions(solved, 1e-9, w * ((l * l) - (a * a)) / (2 * l), w * (l + a) * (l + a) / (2 * l));
        Near.Within(w * Math.Pow(l + a, 2) * Math.Pow(l - a, 2) / (8 * l * l), solved.Diagram.Sagging.Value, 1e-9);
        Near.Within(-w * a * a / 2, solved.Diagram.Hogging.Value, 1e-9);
        Near.Within(l, solved.Diagram.Hogging.At, 1e-9);
    }

    [Fact]
    public void Overhangs_at_both_ends()
    {
        var (a, l, b, w) = (2.0, 6.0, 1.0, 1.0);
        var solved = BeamSums.On([a, a + l], BeamLoad.Uniform(0, a + l + b, w));
        BeamSums.Reactions(solved, 1e-9, w * (Math.Pow(a + l, 2) - (b * b)) / (2 * l), w * (Math.Pow(b + l, 2) - (a * a)) / (2 * l));
        BeamSums.Reactions(solved, 1e-9, 5.25, 3.75);
        Near.Within(-w * a * a / 2, solved.Diagram.MomentAt(a), 1e-9);
        Near.Within(-w * b * b / 2, solved.Diagram.MomentAt(a + l), 1e-9);
    }

    [Fact]
    public void Supports_at_0_5858_of_the_length_make_hogging_and_sagging_alike()
    {
        var spacing = 2 / (2 + Math.Sqrt(2));
        var solved = BeamSums.On([(1 - spacing) / 2, (1 + spacing) / 2], BeamLoad.Uniform(0, 1, 1));
        Near.AsPrinted("0.5858", spacing);
        Near.Within(solved.Diagram.Sagging.Value, -solved.Diagram.Hogging.Value, 1e-9);
    }

    [Fact]
    public void Two_equal_spans_with_one_loaded_lift_the_far_end()
    {
        var solved = BeamSums.On([0, 1, 2], BeamLoad.Uniform(0, 1, 1));
        BeamSums.Reactions(solved, 1e-9, 7 / 16.0, 5 / 8.0, -1 / 16.0);
        Near.Within(-1 / 16.0, solved.Diagram.MomentAt(1), 1e-9);
        Near.Within(49 / 512.0, solved.Diagram.Sagging.Value, 1e-9);
        Near.Within(7 / 16.0, solved.Diagram.Sagging.At, 1e-9);
    }

    [Theory]
    [InlineData(3, 1, 7)]
    [InlineData(4, 2.5, 2)]
    public void Two_equal_spans_with_one_load(double l, double a, double p)
    {
        var b = l - a;
        var solved = BeamSums.On([0, l, 2 * l], BeamLoad.Point(a, p));
        BeamSums.Reactions(
            solved,
            1e-9,
            p * b * ((4 * l * l) - (a * (l + a))) / (4 * l * l * l),
            p * a * ((2 * l * l) + (b * (l + a))) / (2 * l * l * l),
            -p * a * b * (l + a) / (4 * l * l * l));
        Near.Within(-p * a * b * (l + a) / (4 * l * l), solved.Diagram.MomentAt(l), 1e-9);
    }

    [Fact]
    public void Two_unequal_spans_evenly_loaded()
    {
        var (a, b, w) = (4.0, 7.0, 3.0);
        var moment = w * ((a * a * a) + (b * b * b)) / (8 * (a + b));
        var (first, last) = ((w * a / 2) - (moment / a), (w * b / 2) - (moment / b));
        var solved = BeamSums.On([0, a, a + b], BeamLoad.Uniform(0, a + b, w));
        BeamSums.Reactions(solved, 1e-9, first, (w * (a + b)) - first - last, last);
        Assert.True(Math.Abs(solved.Reactions[2] - ((w * a / 2) + (moment / b))) > 0.5);
    }

    [Fact]
    public void Two_unequal_spans_with_a_load_at_the_middle_of_each()
    {
        var (a, b, p1, p2) = (4.0, 7.0, 5.0, 6.0);
        var moment = 3 / 16.0 * ((p1 * a * a) + (p2 * b * b)) / (a + b);
        var solved = BeamSums.On([0, a, a + b], BeamLoad.Point(a / 2, p1), BeamLoad.Point(a + (b / 2), p2));
        Near.Within(-moment, solved.Diagram.MomentAt(a), 1e-9);
        Near.Within((p1 / 2) - (moment / a), solved.Reactions[0], 1e-9);
        Near.Within((p2 / 2) - (moment / b), solved.Reactions[2], 1e-9);
    }

    [Fact]
    public void Three_equal_spans_with_the_outer_ones_loaded()
    {
        var solved = BeamSums.On([0, 1, 2, 3], BeamLoad.Uniform(0, 1, 1), BeamLoad.Uniform(2, 3, 1));
        BeamSums.Reactions(solved, 1e-9, 0.45, 0.55, 0.55, 0.45);
        Near.Within(-0.05, solved.Diagram.MomentAt(1), 1e-9);
        Near.Within(0.10125, solved.Diagram.Sagging.Value, 1e-9);
    }

    [Fact]
    public void Three_equal_spans_with_the_first_two_loaded()
    {
        var solved = BeamSums.On([0, 1, 2, 3], BeamLoad.Uniform(0, 2, 1));
        BeamSums.Reactions(solved, 6e-4, 0.383, 1.20, 0.45, -0.033);
        Near.AsPrinted("-0.1167", solved.Diagram.MomentAt(1));
        Near.AsPrinted("-0.0333", solved.Diagram.MomentAt(2));
    }

    [Fact]
    public void Four_equal_spans_with_the_first_and_the_third_loaded()
    {
        var solved = BeamSums.On([0, 1, 2, 3, 4], BeamLoad.Uniform(0, 1, 1), BeamLoad.Uniform(2, 3, 1));
        BeamSums.Reactions(solved, 1e-4, 0.4464, 0.5714, 0.4643, 0.5714, -0.0536);
        Near.AsPrinted("-0.0536", solved.Diagram.MomentAt(1));
        Near.AsPrinted("-0.0357", solved.Diagram.MomentAt(2));
        Near.AsPrinted("-0.0536", solved.Diagram.MomentAt(3));
        Near.AsPrinted("0.0996", BeamSums.LargestWithin(solved, 0, 1));
        Near.AsPrinted("0.0805", BeamSums.LargestWithin(solved, 2, 3));
    }
}
