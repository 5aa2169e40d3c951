using Advance.Domain;
using Advance.Domain.Stocks;
using Advance.Planning;

namespace Advance.Tests.Planning.Power;

/// <summary>A feeder whose neutral is not as thick as its lines.</summary>
public sealed class OwnNeutralTests
{
    // IEC 60228 class 5, tinned: 8.21 ohm per km for 2.5 mm² and 3.39 for 6 mm² at 20 °C, by 1 + 0.00393 · 40 when hot; 20 m each.
    private const double Hot = (1 + (0.00393 * 40)) * 0.02;
    private const double Line = 8.21 * Hot;
    private const double Thick = 3.39 * Hot;

    // 20 A on one leg alone, in phase: line and neutral of the feeder carry it all; then the lead, out and back.
    [Theory]
    [InlineData("", Line)]
    [InlineData("6 mm2", Thick)]
    public void Each_conductor_loses_by_its_own_size(string neutral, double resistance)
    {
        var circuit = Planner.Plan(Brief(neutral)).Voltage.Circuits.Single();
        Assert.Equal(100 * 20 * (Line + resistance + (2 * Line)) / 230, circuit.Drop.Value!.Value.Percent, 0.01);
    }

    private static Brief Brief(string neutral)
    {
        var brief = LegGigs.Of([new LegGigs.Drawn("L1", 20, 0)]);
        return brief with { Stock = new(brief.Stock.Kinds.ToDictionary(one => one.Key, one => one.Value.Cable is { From: "63 A red male" } ? With(one.Value, neutral) : one.Value, StringComparer.Ordinal)) };
    }

    private static Kind With(Kind feeder, string neutral) => feeder with { Cable = feeder.Cable! with { NeutralSection = neutral } };
}
