using Advance.Handbook;
using CsCheck;

namespace Advance.Tests.Handbook.Rigging;

/// <summary>What holds for any beam on two-way supports.</summary>
public sealed class BeamPropertyTests
{
    private static readonly Gen<BeamLoad> Load = Gen.OneOf(
        from at in Gen.Double[0, 20] from force in Gen.Double[-100, 100] select BeamLoad.Point(at, force),
        from at in Gen.Double[0, 19] from length in Gen.Double[0.01, 1] from force in Gen.Double[-100, 100] select BeamLoad.Uniform(at, at + length, force),
        from at in Gen.Double[0, 20] from couple in Gen.Double[-100, 100] select BeamLoad.Turning(at, couple));

    private static readonly Gen<BeamSupport> Support =
        from offset in Gen.Double[-0.01, 0.01]
        from spring in Gen.Double[1e2, 1e5]
        from isSoft in Gen.Bool
        from isClamped in Gen.Bool
        select new BeamSupport(0) { Offset = offset, Stiffness = isSoft ? spring : null, IsClamped = isClamped };

    private static readonly Gen<(Beam Beam, BeamSupport[] Supports)> Any =
        from loads in Load.Array[1, 8]
        from shear in Gen.Double[100, 1e5]
        from isSheared in Gen.Bool
        from supports in Support.Array[2, 7]
        from gaps in Gen.Double[0.3, 2.5].Array[supports.Length]
        select (new Beam(20, 5000, isSheared ? shear : null, loads), supports.Select((one, index) => one with { At = gaps.Take(index + 1).Sum() }).ToArray());

    [Fact]
    public void Reactions_sum_to_the_loads_and_moments_balance() => Any.Sample(
        one =>
        {
            var solved = ContinuousBeam.Solve(one.Beam, one.Supports);
            Assert.Equal(0, solved.ForceLeft, 1e-6);
            Assert.Equal(0, solved.MomentLeft, 1e-5);
            var last = solved.Diagram.Layout.At.Count - 1;
            Assert.Equal(0, solved.Diagram.ShearAfter(last), 1e-6);
            Assert.Equal(0, solved.Diagram.MomentAfter(last), 1e-5);
        },
        iter: 500);

    [Fact]
    public void The_curve_that_bending_and_shear_give_passes_through_every_support() => Any.Sample(
        one =>
        {
            // The curve is integrated from the diagram and laid through the outermost supports alone, so that the inner ones prove both.
            var solved = ContinuousBeam.Solve(one.Beam, one.Supports);
            foreach (var (support, reaction) in one.Supports.Zip(solved.Reactions))
            {
                var give = support.Stiffness is { } spring ? reaction / spring : 0;
                Assert.Equal(support.Offset - give, solved.HeightAt(support.At), 1e-7);
            }
        },
        iter: 500);

    [Fact]
    public void A_load_at_one_place_moves_another_as_much_as_the_other_moves_the_one() => Gen.Select(Any, Gen.Double[0, 20], Gen.Double[0, 20]).Sample(
        (one, first, second) =>
        {
            BeamSupport[] level = [.. one.Supports.Select(support => support with { Offset = 0 })];
            double Height(double load, double at) => ContinuousBeam.Solve(new Beam(20, 5000, one.Beam.Shear, [BeamLoad.Point(load, 50)]), level).HeightAt(at);
            Assert.Equal(Height(first, second), Height(second, first), 1e-6);
        },
        iter: 300);

    [Fact]
    public void Supports_that_do_not_hold_it_are_refused()
    {
        Beam beam = new(4, 1, null, [BeamLoad.Point(1, 1)]);
        Assert.Throws<ArgumentException>(() => ContinuousBeam.Solve(beam, new BeamSupport(1)));
        Assert.Throws<ArgumentException>(() => ContinuousBeam.Solve(beam, new(1), new BeamSupport(2) { Stiffness = 0 }));
        Assert.Throws<ArgumentException>(() => ContinuousBeam.Solve(beam, new(1), new BeamSupport(1)));
        Assert.Throws<ArgumentException>(() => ContinuousBeam.Solve(beam, new(1), new BeamSupport(5)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Beam(4, 1, null, [BeamLoad.Point(5, 1)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => BeamLoad.Uniform(2, 2, 1));
    }
}
