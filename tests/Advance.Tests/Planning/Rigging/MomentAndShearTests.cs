using Advance.Domain.Stocks;
using Advance.Handbook;
using Advance.Planning;

namespace Advance.Tests.Planning.Rigging;

/// <summary>What moment and shear take together, against the same sum at two thousand places along the truss: no source, a search by hand.</summary>
public sealed class MomentAndShearTests
{
    private static readonly double[] Supports = [1, 5, 9];

    [Theory]
    [InlineData(MomentAndShear.Added)]
    [InlineData(MomentAndShear.Squared)]
    [InlineData(MomentAndShear.Apart)]
    public void The_worst_place_is_found(MomentAndShear adds)
    {
        var beam = new Beam(11, 1.7e6, 3e6, [BeamLoad.Uniform(0, 11, 400), BeamLoad.Point(3.2, 2500), BeamLoad.Uniform(6, 8, 900)]);
        var state = ContinuousBeam.Solve(beam, [.. Supports.Select(at => new BeamSupport(at))]);
        var capacities = new LiftCapacities([null, null, null], 4000, 2500, 6000) { Adds = adds };

        var use = capacities.UseOf(new LiftState(LiftStudy.Of(Trusses.Even(3), 0, 0)!.Rigid.Case, [0, 0, 0], state.Diagram, state))!;

        var searched = Enumerable.Range(1, 21_999).Select(step => step * 11.0 / 22_000).Select(at => Share(state.Diagram, at, adds)).Max();
        Assert.True(use.Share >= searched - 1e-12, $"{use.Share} of {searched}");
        Assert.Equal(searched, use.Share, 2e-3);
    }

    private static double Share(BeamDiagram diagram, double at, MomentAndShear adds)
    {
        var moment = diagram.MomentAt(at);
        var (bends, shears) = (Math.Abs(moment) / (moment > 0 ? 4000 : 2500), Math.Max(Math.Abs(diagram.ShearAt(at)), Math.Abs(diagram.ShearLeftOf(at))) / 6000);
        return adds switch
        {
            MomentAndShear.Added => bends + shears,
            MomentAndShear.Squared => Math.Sqrt((bends * bends) + (shears * shears)),
            _ => Math.Max(bends, shears),
        };
    }
}
