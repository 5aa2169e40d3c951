using Advance.Planning;

namespace Advance.Tests.Planning.Rigging;

/// <summary>What holds for any truss on hoists.</summary>
public sealed class LiftPropertyTests
{
    [Fact]
    public void A_mirrored_truss_has_a_mirrored_envelope()
    {
        foreach (var truss in Trusses.Fixed(60))
        {
            var (one, other) = (LiftStudy.Of(truss, 0.01, 0.03)!, LiftStudy.Of(Mirrored(truss), 0.01, 0.03)!);
            foreach (var (envelope, mirrored) in new[] { (one.Level, other.Level), (one.AtRest, other.AtRest), (one.Moving, other.Moving), (one.Gone, other.Gone), (one.Bound, other.Bound) })
            {
                Near(truss.Weight, envelope.Hoists.Reverse().Select(hoist => hoist.Most.Level), mirrored.Hoists.Select(hoist => hoist.Most.Level));
                Near(truss.Weight, envelope.Hoists.Reverse().Select(hoist => hoist.Least.Level), mirrored.Hoists.Select(hoist => hoist.Least.Level));
                Near(truss.Weight * truss.Length, [envelope.Sagging?.Value ?? 0, envelope.Hogging?.Value ?? 0], [mirrored.Sagging?.Value ?? 0, mirrored.Hogging?.Value ?? 0]);
                Near(truss.Weight, [Math.Abs(envelope.Shear?.Value ?? 0)], [Math.Abs(mirrored.Shear?.Value ?? 0)]);
            }

            var drawn = other.AtRest.Curve.ToLookup(point => Math.Round(truss.Length - point.At, 6));
            var both = one.AtRest.Curve.Where(point => drawn.Contains(Math.Round(point.At, 6))).ToList();
            Assert.True(both.Count > 100);
            foreach (var point in both)
            {
                var there = drawn[Math.Round(point.At, 6)].ToList();
                Near(truss.Weight * truss.Length, [point.MostMoment, point.LeastMoment], [there.Max(mirrored => mirrored.MostMoment), there.Min(mirrored => mirrored.LeastMoment)]);
            }
        }
    }

    [Fact]
    public void Stiffer_chains_tend_to_chains_that_do_not_give()
    {
        foreach (var truss in Trusses.Fixed(60))
        {
            var off = new[] { 1e6, 1e9, 1e12 }.Select(stiffness => Stiff(truss, stiffness)).Select(study =>
                study.Soft!.Levels.Zip(study.Rigid.Levels, (soft, rigid) => Math.Abs(soft - rigid)).Max() / truss.Weight).ToList();
            Assert.True(off[1] <= off[0] + 1e-6 && off[2] <= off[1] + 1e-6, string.Join(", ", off));
            Assert.Equal(0, off[2], 1e-3);
        }
    }

    private static LiftStudy Stiff(HungBeam truss, double stiffness) => LiftStudy.Of(
        new HungBeam(truss.Length, truss.Beam.Bending, truss.Beam.Shear, truss.Weights, truss.Loads, [.. truss.Hoists.Select(hoist => hoist with { Stiffness = stiffness })]), 0, 0)!;

    private static HungBeam Mirrored(HungBeam truss) => new(
        truss.Length,
        truss.Beam.Bending,
        truss.Beam.Shear,
        [.. truss.Weights.Select(weight => weight with { From = truss.Length - weight.To, To = truss.Length - weight.From })],
        [.. truss.Loads.Select(load => load with { At = truss.Length - load.At })],
        [.. truss.Hoists.Reverse().Select(hoist => hoist with { At = truss.Length - hoist.At })]);

    private static void Near(double whole, IEnumerable<double> expected, IEnumerable<double> actual) =>
        Assert.All(expected.Zip(actual), pair => Assert.Equal(pair.First, pair.Second, 1e-6 * whole));
}
