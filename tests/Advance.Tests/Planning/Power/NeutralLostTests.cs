using System.Numerics;
using Advance.Planning;
using CsCheck;

namespace Advance.Tests.Planning.Power;

/// <summary>Voltages when a neutral opens, against admittances added here.</summary>
public sealed class NeutralLostTests
{
    private static readonly double[] Angles = [0, -120, 120];

    [Fact]
    public void The_middle_of_the_star_moves_by_the_mean_of_the_voltages_weighted_by_admittance() => LegGigs.Wye
        .Select(things => things.Select(one => one with { Lag = one.Lag ?? 0 }).Where(one => one.Phase.Length == 2).ToList())
        .Where(things => things.DistinctBy(one => one.Phase).Count() > 1).Sample(
        things =>
        {
            var lost = Planner.Plan(LegGigs.Of(things)).Power.Services[0].NeutralLost!;
            var admittance = Enumerable.Range(0, 3).Select(leg => things.Where(one => one.Phase == $"L{leg + 1}").Aggregate(Complex.Zero, (sum, one) => sum + (At(First(one), -one.Lag!.Value) / 230))).ToList();
            var middle = admittance.Zip(Angles, (y, angle) => y * At(230, angle)).Aggregate((a, b) => a + b) / admittance.Aggregate((a, b) => a + b);
            for (var leg = 0; leg < 3; leg++)
            {
                Assert.Equal((At(230, Angles[leg]) - middle).Magnitude, lost.Legs[leg].Voltage.Value!.Value.Volts, 1e-6);
            }
        },
        iter: 40);

    // Two resistive loads in series over 400 V: 10 A and 30 A of 230 V are 23 and 7.67 ohm, and share it 3 to 1.
    [Fact]
    public void Two_legs_share_the_voltage_between_lines_as_their_resistances()
    {
        var lost = Planner.Plan(LegGigs.Of([new("L1", 10, 0), new("L2", 30, 0)])).Power.Services[0].NeutralLost!;
        Assert.Equal(230 * Math.Sqrt(3) * 0.75, lost.Legs[0].Voltage.Value!.Value.Volts, 1e-6);
        Assert.Equal(230 * Math.Sqrt(3) * 0.25, lost.Legs[1].Voltage.Value!.Value.Volts, 1e-6);
        Assert.Equal(["Thing 1"], lost.Legs[0].AtRisk.Select(load => load.Name));
        Assert.Empty(lost.Legs[1].AtRisk);
    }

    [Fact]
    public void Equal_loads_keep_their_voltage()
    {
        var lost = Planner.Plan(LegGigs.Of([new("L1", 10, 20), new("L2", 10, 20), new("L3", 10, 20)])).Power.Services[0].NeutralLost!;
        Assert.All(lost.Legs, leg => Assert.Equal(230, leg.Voltage.Value!.Value.Volts, 1e-6));
    }

    [Fact]
    public void The_halves_of_a_split_phase_share_twice_the_voltage()
    {
        var lost = Planner.Plan(LegGigs.Of([new("L1", 5, 0), new("L2", 15, 0)], "120/240 V split-phase 60 Hz")).Power.Services[0].NeutralLost!;
        Assert.Equal(180, lost.Legs[0].Voltage.Value!.Value.Volts, 1e-6);
        Assert.Equal(60, lost.Legs[1].Voltage.Value!.Value.Volts, 1e-6);
    }

    [Fact]
    public void Loads_on_one_leg_only_go_out() => Assert.Null(Planner.Plan(LegGigs.Of([new("L1", 5, 0), new("L2-L3", 5, 0)])).Power.Services[0].NeutralLost);

    private static double First(LegGigs.Drawn thing) => thing.Amperes / Math.Sqrt(1 + (thing.Third * thing.Third / 10000) + (thing.Fifth * thing.Fifth / 10000));

    private static Complex At(double length, double degrees) => Complex.FromPolarCoordinates(length, degrees * Math.PI / 180);
}
