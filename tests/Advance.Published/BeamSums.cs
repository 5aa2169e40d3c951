using Advance.Handbook;

namespace Advance.Published;

/// <summary>Solves a beam of a published case; stiffness only matters for how it lies, so 1 is taken where a case says none.</summary>
internal static class BeamSums
{
    /// <summary>Loads on two-way supports that do not give; the beam ends where the last of them does.</summary>
    public static BeamSolution On(double[] supports, params BeamLoad[] loads) => On([.. supports.Select(at => new BeamSupport(at))], loads);

    /// <summary>Loads on any supports.</summary>
    public static BeamSolution On(BeamSupport[] supports, params BeamLoad[] loads) =>
        ContinuousBeam.Solve(new Beam(Math.Max(supports.Max(support => support.At), loads.Max(load => load.To)), 1, null, loads), supports);

    /// <summary>Spans of 1 m, each with the same load; how each is loaded is told by where its span starts.</summary>
    public static BeamSolution EqualSpans(int spans, Func<double, IEnumerable<BeamLoad>> loads) =>
        On([.. Enumerable.Range(0, spans + 1).Select(at => (double)at)], [.. Enumerable.Range(0, spans).SelectMany(at => loads(at))]);

    /// <summary>Reactions as numbers, each within a tolerance; sums must balance too.</summary>
    public static void Reactions(BeamSolution solved, double tolerance, params double[] expected)
    {
        Assert.Equal(expected.Length, solved.Reactions.Count);
        foreach (var (wanted, got) in expected.Zip(solved.Reactions))
        {
            Near.Within(wanted, got, tolerance);
        }

        Near.Within(0, solved.ForceLeft, 1e-9);
        Near.Within(0, solved.MomentLeft, 1e-8);
    }

    /// <summary>The largest moment within a stretch.</summary>
    public static double LargestWithin(BeamSolution solved, double from, double to) =>
        Enumerable.Range(0, 20001).Max(step => solved.Diagram.MomentAt(from + ((to - from) * step / 20001)));
}
