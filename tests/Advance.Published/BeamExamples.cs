using Advance.Handbook;

namespace Advance.Published;

/// <summary>
/// Worked examples of continuous beams. Sources beside each; reactions that a source does not print were worked out by another stiffness program.
/// </summary>
public sealed class BeamExamples
{
    [Fact]
    public void Nptel_105101085_example_5_22_with_inputs_inferred()
    {
        var solved = BeamSums.On([0, 3, 6], BeamLoad.Uniform(0, 3, 40), BeamLoad.Point(4.5, 120));
        BeamSums.Reactions(solved, 1e-9, 41.25, 157.5, 41.25);
        Near.Within(-56.25, solved.Diagram.MomentAt(3), 1e-9);
    }

    [Fact]
    public void Kassimali_example_D3_with_a_fixed_end_and_an_overhang()
    {
        var solved = BeamSums.On(
            [new BeamSupport(0) { IsClamped = true }, new(20), new(50)],
            BeamLoad.Point(10, 45),
            BeamLoad.Uniform(20, 60, 1.8));
        BeamSums.Reactions(solved, 1e-9, 20.25, 53.5, 43.25);
        Near.Within(-97.5, solved.Diagram.MomentAt(0), 1e-9);
        Near.Within(-142.5, solved.Diagram.MomentAt(20), 1e-9);
        Near.Within(-90, solved.Diagram.MomentAt(50), 1e-9);
    }

    [Fact]
    public void Pycba_two_unequal_spans()
    {
        var solved = BeamSums.On([0, 7.5, 14.5], BeamLoad.Uniform(0, 14.5, 20));
        BeamSums.Reactions(solved, 1e-8, 57.41666667, 181.42261905, 51.16071429);
        Near.Within(-131.875, solved.Diagram.MomentAt(7.5), 1e-9);
    }

    [Fact]
    public void Mathalino_problem_826_with_a_couple_and_an_uplift()
    {
        var solved = BeamSums.On([0, 4, 8, 11], BeamLoad.Turning(2, 8), BeamLoad.Uniform(4, 8, 2), BeamLoad.Point(9, 6));
        BeamSums.Reactions(solved, 6e-5, -2.4231, 6.0385, 9.4615, 0.9231);
        Near.AsPrinted("-1.6923", solved.Diagram.MomentAt(4));

        // Printed -3.2307, cut: exactly -42/13.
        Near.Within(-42 / 13.0, solved.Diagram.MomentAt(8), 1e-9);
    }

    [Fact]
    public void Mathalino_problem_824()
    {
        var solved = BeamSums.On([0, 4, 6, 10], BeamLoad.Uniform(0, 4, 2), BeamLoad.Point(5, 10), BeamLoad.Uniform(6, 10, 2));
        BeamSums.Reactions(solved, 6e-5, 3.1607, 9.8393, 9.8393, 3.1607);
        Near.Within(-47 / 14.0, solved.Diagram.MomentAt(4), 1e-9);
        Near.Within(-47 / 14.0, solved.Diagram.MomentAt(6), 1e-9);
    }

    [Fact]
    public void Cisc_handbook_diagram_24()
    {
        var solved = BeamSums.On([0, 10], BeamLoad.Uniform(0, 13, 10));
        BeamSums.Reactions(solved, 1e-9, 45.5, 84.5);
        Near.Within(-45, solved.Diagram.MomentAt(10), 1e-9);
        Near.AsPrinted("103.5125", solved.Diagram.Sagging.Value);
    }

    [Fact]
    public void Mixed_loads_on_overhangs()
    {
        // civilguruvu.com; the left support stands at 1 m of this beam.
        var solved = BeamSums.On([1, 5], BeamLoad.Point(0, 20), BeamLoad.Point(2, 40), BeamLoad.Uniform(3, 6, 5), BeamLoad.Point(6, 20));
        BeamSums.Reactions(solved, 1e-9, 51.875, 43.125);
    }

    [Fact]
    public void Supports_set_in_alike() => BeamSums.Reactions(BeamSums.On([1, 3], BeamLoad.Uniform(0, 4, 2)), 1e-9, 4, 4);

    [Fact]
    public void Hibbeler_example_12_21_propped_cantilever()
    {
        var solved = BeamSums.On([new BeamSupport(0) { IsClamped = true }, new(3)], BeamLoad.Point(1.5, 8), BeamLoad.Uniform(0, 3, 6));
        Near.AsPrinted("9.25", solved.Reactions[1]);
        Near.AsPrinted("16.75", solved.Diagram.LargestShear.Value);
        Near.Within(-11.25, solved.Diagram.MomentAt(0), 1e-9);
        Near.Within(-11.25, solved.Couples[0], 1e-9);
    }

    [Fact]
    public void Rigging_mathematics_lesson_9_two_loads_on_two_points() =>
        BeamSums.Reactions(BeamSums.On([0, 20], BeamLoad.Point(2.5, 100), BeamLoad.Point(15, 200)), 1e-9, 137.5, 162.5);

    [Fact]
    public void Pycba_sub_frame_held_against_turning_at_each_support()
    {
        BeamLoad[] loads = [BeamLoad.Uniform(0, 6, 10), BeamLoad.Uniform(6, 14, 20), BeamLoad.Uniform(14, 20, 10)];
        BeamSums.Reactions(BeamSums.On([.. new double[] { 0, 6, 14, 20 }.Select(at => new BeamSupport(at) { IsClamped = true })], loads), 1e-9, 30, 110, 110, 30);
        BeamSums.Reactions(BeamSums.On([0, 6, 14, 20], loads), 6e-4, 15.648, 124.352, 124.352, 15.648);
    }

    [Fact]
    public void A_short_back_span_is_lifted()
    {
        BeamSums.Reactions(BeamSums.On([0, 8, 10], BeamLoad.Point(4, 10)), 1e-9, 3.5, 12.5, -6);
        BeamSums.Reactions(BeamSums.On([0, 2, 12], BeamLoad.Uniform(0, 12, 1)), 1e-9, -4.25, 12.3, 3.95);
    }

    [Fact]
    public void Springs_under_a_stiff_truss_level_the_load_out()
    {
        // Safety page of the design: spans of 5 m, EI 1200 kN m², 250 kN/m under each point.
        var truss = ContinuousBeam.Solve(
            new Beam(10, 1200, null, [BeamLoad.Uniform(0, 10, 1)]),
            [.. new double[] { 0, 5, 10 }.Select(at => new BeamSupport(at) { Stiffness = 250 })]);
        foreach (var (expected, actual) in new[] { 0.45, 1.10, 0.45 }.Zip(truss.Reactions))
        {
            Near.Within(expected, actual / 5, 0.005);
        }
    }
}
