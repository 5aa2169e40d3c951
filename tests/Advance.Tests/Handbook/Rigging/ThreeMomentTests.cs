using Advance.Handbook;
using CsCheck;
using MathNet.Numerics.LinearAlgebra;

namespace Advance.Tests.Handbook.Rigging;

/// <summary>
/// The beam on two-way supports against the theorem of three moments (Clapeyron; as textbooks of structural analysis give it, from memory),
/// solved by a library that the Handbook does not use. The theorem bends only and shares no line with the beam's own elements.
/// </summary>
public sealed class ThreeMomentTests
{
    private const double Bending = 2e6;

    private static readonly Gen<Span> Spans =
        from length in Gen.Double[0.5, 8]
        from perMetre in Gen.Double[0, 900]
        from force in Gen.Double[0, 6000]
        from share in Gen.Double[0.05, 0.95]
        from end in Gen.Double[-0.02, 0.02]
        select new Span(length, perMetre, force, share * length, end);

    [Fact]
    public void Moments_and_reactions_agree() => Spans.Array[1, 9].Sample(
        spans =>
        {
            double[] at = [0, .. spans.Select((_, index) => spans.Take(index + 1).Sum(span => span.Length))];
            var beam = new Beam(
                at[^1],
                Bending,
                null,
                [.. spans.SelectMany((span, index) => new[] { BeamLoad.Uniform(at[index], at[index + 1], span.PerMetre), BeamLoad.Point(at[index] + span.From, span.Force) })]);
            double[] heights = [0, .. spans.Select(span => span.End)];
            var solved = ContinuousBeam.Solve(beam, [.. at.Zip(heights, (place, height) => new BeamSupport(place) { Offset = height })]);
            var moments = Moments(spans, heights);
            Assert.All(moments.Zip(at), pair => Near(pair.First, solved.Diagram.MomentAt(pair.Second)));
            Assert.All(Reactions(spans, moments).Zip(solved.Reactions), pair => Near(pair.First, pair.Second));
        },
        iter: 300);

    private static void Near(double expected, double actual) => Assert.Equal(expected, actual, 1e-6 * (1e4 + Math.Abs(expected)));

    // M₁ L₁ + 2 M₂ (L₁ + L₂) + M₃ L₂ = −w₁ L₁³ / 4 − w₂ L₂³ / 4 − P₁ a (L₁² − a²) / L₁ − P₂ b (L₂² − b²) / L₂ + 6 EI ((h₁ − h₂) / L₁ + (h₃ − h₂) / L₂), sagging positive.
    private static double[] Moments(Span[] spans, double[] heights)
    {
        var inner = spans.Length - 1;
        if (inner == 0)
        {
            return [0, 0];
        }

        var left = Matrix<double>.Build.Dense(inner, inner);
        var right = Vector<double>.Build.Dense(inner);
        for (var index = 0; index < inner; index++)
        {
            var (one, next) = (spans[index], spans[index + 1]);
            left[index, index] = 2 * (one.Length + next.Length);
            if (index > 0)
            {
                left[index, index - 1] = one.Length;
            }

            if (index < inner - 1)
            {
                left[index, index + 1] = next.Length;
            }

            right[index] = -one.LoadFromLeft - next.LoadFromRight
                + (6 * Bending * (((heights[index] - heights[index + 1]) / one.Length) + ((heights[index + 2] - heights[index + 1]) / next.Length)));
        }

        return [0, .. left.Solve(right), 0];
    }

    private static double[] Reactions(Span[] spans, double[] moments)
    {
        var reactions = new double[spans.Length + 1];
        foreach (var (index, span) in spans.Index())
        {
            var tilt = (moments[index + 1] - moments[index]) / span.Length;
            var atLeft = (span.PerMetre * span.Length / 2) + (span.Force * (span.Length - span.From) / span.Length) + tilt;
            reactions[index] += atLeft;
            reactions[index + 1] += (span.PerMetre * span.Length) + span.Force - atLeft;
        }

        return reactions;
    }

    /// <summary>A span from one support to the next, with a load all along it and one at a place.</summary>
    /// <param name="Length">m.</param>
    /// <param name="PerMetre">N/m.</param>
    /// <param name="Force">N.</param>
    /// <param name="From">Where the force is, m from its left support.</param>
    /// <param name="End">How high its right support is, m.</param>
    private sealed record Span(double Length, double PerMetre, double Force, double From, double End)
    {
        public double LoadFromLeft => (PerMetre * Cube / 4) + (Force * From * ((Length * Length) - (From * From)) / Length);

        public double LoadFromRight => (PerMetre * Cube / 4) + (Force * (Length - From) * ((Length * Length) - ((Length - From) * (Length - From))) / Length);

        private double Cube => Length * Length * Length;
    }
}
