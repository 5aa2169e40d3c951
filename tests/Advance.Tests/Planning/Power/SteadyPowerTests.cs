using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Planning;
using CsCheck;

namespace Advance.Tests.Planning.Power;

/// <summary>Loads whose power stays the same as the voltage falls.</summary>
public sealed class SteadyPowerTests
{
    // R of a conductor of these gigs, and both of feeder and lead in a row, out and back.
    private const double Loop = 2 * 2 * 8.21 * (1 + (0.00393 * 40)) * 0.02;

    /// <summary>U² - U₀·U + P·R = 0, the larger root: the voltage at a load of steady power behind a resistance (circuit theory), where X is 0.</summary>
    [Fact]
    public void The_voltage_is_the_larger_root_of_the_quadratic() => Gen.Int[10, 150].Select(tenths => tenths / 10.0).Sample(
        amperes =>
        {
            var end = Planner.Plan(Brief(amperes)).Voltage.Circuits.Single().AtEnd.Value!.Value.Volts;
            var expected = (230 + Math.Sqrt((230 * 230) - (4 * 230 * 2 * amperes * Loop))) / 2;
            Assert.Equal(expected, end, 0.05);
        },
        iter: 20);

    [Fact]
    public void It_gets_less_than_a_load_of_steady_current() =>
        Assert.True(Planner.Plan(Brief(12)).Voltage.Circuits.Single().AtEnd.Value!.Value.Volts < Planner.Plan(Brief(12, isSteady: false)).Voltage.Circuits.Single().AtEnd.Value!.Value.Volts - 0.3);

    private static Brief Brief(double amperes, bool isSteady = true)
    {
        var load = PowerGigs.Load("Thing 1", amperes, 0);
        return PowerGigs.Brief(
            [PowerGigs.Thing("Thing 1", 0)],
            [load with { Mains = load.Mains! with { SteadyPower = Given.Of(isSteady, Gigs.Here) } }, PowerGigs.Box("32 A blue"), PowerGigs.Lead("16 A blue"), PowerGigs.Lead("32 A blue")],
            [PowerGigs.Distribution("PD1", "box", "service 0", 0)],
            [PowerGigs.Service("0", 0)]);
    }
}
