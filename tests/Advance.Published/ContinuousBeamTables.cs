using Advance.Handbook;

namespace Advance.Published;

/// <summary>
/// Continuous beams of equal spans. Evenly loaded: Civil Engineering Formulas, table 2.1, p. 50, as exact fractions (three spans also Gere and Goodno,
/// problem 10.4-14). Point loads: the row of two spans as engineering pages print it, the others worked out by another stiffness program.
/// </summary>
public sealed class ContinuousBeamTables
{
    [Theory]
    [InlineData(1, 2, "1", "0", "0.125")]
    [InlineData(2, 8, "3 10", "0 1", "0.0703")]
    [InlineData(3, 10, "4 11", "0 1", "0.080 0.025")]
    [InlineData(4, 28, "11 32 26", "0 3 2", "0.0772 0.0364")]
    [InlineData(5, 38, "15 43 37", "0 4 3", "0.0779 0.0332 0.0461")]
    [InlineData(6, 104, "41 118 100 106", "0 11 8 9", "0.0777 0.0340 0.0433")]
    [InlineData(7, 142, "56 161 137 143", "0 15 11 12", "0.0778 0.0338 0.0440 0.0405")]
    public void Evenly_loaded_as_exact_fractions(int spans, double whole, string reactions, string hogging, string sagging)
    {
        var solved = BeamSums.EqualSpans(spans, at => [BeamLoad.Uniform(at, at + 1, 1)]);
        var left = Numbers(reactions).Select(value => value / whole).ToArray();
        BeamSums.Reactions(solved, 1e-9, [.. left, .. left.Reverse().Skip(spans % 2 == 0 ? 1 : 0)]);
        foreach (var (value, support) in Numbers(hogging).Select((value, support) => (value, support)))
        {
            Near.Within(-value / whole, solved.Diagram.MomentAt(support), 1e-9);
            Near.Within(-value / whole, solved.Diagram.MomentAt(spans - support), 1e-9);
        }

        foreach (var (value, span) in sagging.Split(' ').Select((value, span) => (value, span)))
        {
            // The table is cut, not rounded, in places: one unit of its last place.
            Near.Within(double.Parse(value), BeamSums.LargestWithin(solved, span, span + 1), 1.05e-4);
        }
    }

    [Theory]
    [InlineData(2, "0.3125 1.375", "0.1875")]
    [InlineData(3, "0.35 1.15", "0.15")]
    [InlineData(4, "0.3393 1.2143 0.8929", "0.1607 0.1071")]
    public void A_load_at_the_middle_of_each_span(int spans, string reactions, string hogging) =>
        Compare(BeamSums.EqualSpans(spans, at => [BeamLoad.Point(at + 0.5, 1)]), reactions, hogging);

    [Theory]
    [InlineData(2, "0.6667 2.6667", "0.3333")]
    [InlineData(3, "0.7333 2.2667", "0.2667")]
    [InlineData(4, "0.7143 2.3810 1.8095", "0.2857 0.1905")]
    public void Loads_at_the_third_points_of_each_span(int spans, string reactions, string hogging) =>
        Compare(BeamSums.EqualSpans(spans, at => [BeamLoad.Point(at + (1 / 3.0), 1), BeamLoad.Point(at + (2 / 3.0), 1)]), reactions, hogging);

    [Fact]
    public void Two_spans_with_a_load_at_the_middle_of_each_sag_by_5_32()
    {
        var solved = BeamSums.EqualSpans(2, at => [BeamLoad.Point(at + 0.5, 1)]);
        Near.Within(5 / 32.0, solved.Diagram.Sagging.Value, 1e-9);
    }

    [Theory]
    [InlineData(3, "18.75 62.5 18.75")]
    [InlineData(4, "13.33 36.67 36.67 13.33")]
    [InlineData(5, "9.82 28.57 23.21 28.57 9.82")]
    public void Share_of_the_whole_on_each_of_several_points_is_not_a_tributary_length(int points, string shares)
    {
        var solved = BeamSums.EqualSpans(points - 1, at => [BeamLoad.Uniform(at, at + 1, 1)]);
        foreach (var (share, reaction) in shares.Split(' ').Zip(solved.Reactions))
        {
            Near.AsPrinted(share, 100 * reaction / (points - 1));
        }
    }

    [Theory]
    [InlineData(3, "243.75 812.50 243.75")]
    [InlineData(4, "173.3 476.7 476.7 173.3")]
    [InlineData(5, "127.7 371.4 301.8 371.4 127.7")]
    public void Truss_of_1300_kg_on_hoists_of_500_kg(int hoists, string kilograms)
    {
        var solved = BeamSums.EqualSpans(hoists - 1, at => [BeamLoad.Uniform(at, at + 1, 1300.0 / (hoists - 1))]);
        foreach (var (printed, reaction) in kilograms.Split(' ').Zip(solved.Reactions))
        {
            Near.AsPrinted(printed, reaction);
        }
    }

    private static void Compare(BeamSolution solved, string reactions, string hogging)
    {
        foreach (var (printed, reaction) in reactions.Split(' ').Zip(solved.Reactions))
        {
            Near.AsPrinted(printed, reaction);
        }

        foreach (var (printed, support) in hogging.Split(' ').Select((printed, support) => (printed, support)))
        {
            Near.AsPrinted(printed, -solved.Diagram.MomentAt(support + 1));
        }
    }

    private static IEnumerable<double> Numbers(string text) => text.Split(' ').Select(double.Parse);
}
