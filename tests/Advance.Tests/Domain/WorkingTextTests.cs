using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Wording;
using UnitsNet;

namespace Advance.Tests.Domain;

public sealed class WorkingTextTests
{
    private static readonly Mark Here = new("gig.yaml", 12, 7);

    [Fact]
    public void A_derivation_tells_formula_inputs_result_and_source_and_then_what_the_inputs_came_from()
    {
        var path = Sum.Of("path", "p = Σ pᵢ", Publication.Arithmetic)
            .PutAll("pᵢ", [Length(10, Known.Weighed), Length(10 / 3.0, Known.Stated)])
            .Gives(terms => terms.Values.Aggregate(UnitsNet.Length.Zero, (sum, part) => sum + part));
        var delay = Sum.Of("delay", "τ = p / c", new Publication("physics of waves", "", "travel", Standing.FromMemory))
            .Put("p", path)
            .Put("c", Figure.Policy("sound-speed", Speed.FromMetersPerSecond(343)))
            .Gives((length, speed) => Duration.FromSeconds(length.Meters / speed.MetersPerSecond));
        Assert.Equal(
            """
            delay: τ = p / c
              p = 13.3333333 m, worked out below
              c = 343 m/s, policy sound-speed
              gives 38.8727 ms; physics of waves, travel (from memory)
              path: p = Σ pᵢ
                pᵢ = 10 m + 3.33333333 m, worked out
                gives 13.3333 m; arithmetic

            """,
            WorkingText.Of(delay.How!));
    }

    [Fact]
    public void A_working_that_is_used_twice_is_told_once()
    {
        var part = Sum.Of("part", "p = 2 · a", Publication.Arithmetic).Put("a", Figure.Count(3)).Gives(a => 2 * a);
        var whole = Sum.Of("whole", "w = p + q", Publication.Arithmetic).Put("p", part).Put("q", part).Gives((p, q) => p + q);
        Assert.Single(WorkingText.Of(whole.How!).Split('\n'), line => line.Contains("p = 2 · a"));
    }

    [Fact]
    public void An_open_question_is_named_with_who_must_answer()
    {
        var given = Given.Unknown<Length>(Here, new Doubt("reach", Here, Who: "venue"));
        var sum = Sum.Of("needed", "L = 2 · r", Publication.Arithmetic).Put("r", Figure.From(given)).Gives(reach => reach * 2);
        Assert.Equal("needed: L = 2 · r\n  r = unknown, gig.yaml:12:7 TBC: reach (venue)\n  gives unknown; arithmetic\n", WorkingText.Of(sum.How!));
    }

    [Fact]
    public void A_chain_of_workings_without_end_is_cut()
    {
        var figure = Figure.Count(1);
        for (var step = 0; step < 30; step++)
        {
            figure = Sum.Of($"step {step}", "b = a + 1", Publication.Arithmetic).Put("a", figure).Gives(a => a + 1);
        }

        // Nine are told, the last of them without what is behind it.
        var lines = WorkingText.Of(figure.How!).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(9, lines.Count(line => line.Contains("step")));
        Assert.EndsWith("a = 22, worked out", lines[^2]);
    }

    private static Figure<Length> Length(double metres, Known how) => Figure.From(Given.Of(UnitsNet.Length.FromMeters(metres), Here, how: how));
}
