using System.Numerics;
using Advance.Planning;
using CsCheck;

namespace Advance.Tests.Planning.Power;

/// <summary>Voltages leg by leg, against Kirchhoff's laws written out here with complex numbers.</summary>
public sealed class LegVoltageTests
{
    private const double Near = 1e-6;

    // Every lead of these gigs is 20 m of 2.5 mm², the feeder too: one conductor hot, and its reactance.
    private static readonly Complex Lead = new(8.21 * (1 + (0.00393 * 40)) * 0.02, 0.08 * 0.02);

    private static readonly double[] Wye = [0, -120, 120];

    [Fact]
    public void Each_leg_loses_its_own_current_times_the_line_and_the_neutral_current_times_the_neutral() => LegGigs.Wye.Select(Known).Sample(
        things =>
        {
            var point = Planner.Plan(LegGigs.Of(things)).Voltage.Points.Single();
            for (var leg = 0; leg < 3; leg++)
            {
                Assert.Equal(100 - (100 * AtBox(things, Wye, leg).Magnitude / 230), point.Legs[leg].Drop.Value!.Value.Percent, Near);
                var alone = things.Where(one => Lines(one).SequenceEqual([leg])).ToList();
                Assert.Equal(100 - (100 * AtBox(alone, Wye, leg).Magnitude / 230), point.Legs[leg].Alone.Value!.Value.Percent, Near);
            }
        },
        iter: 40);

    [Fact]
    public void A_rise_is_the_highest_over_all_sets_of_legs() => LegGigs.Wye.Select(Known).Sample(
        things =>
        {
            var point = Planner.Plan(LegGigs.Of(things)).Voltage.Points.Single();
            for (var leg = 0; leg < 3; leg++)
            {
                var highest = Enumerable.Range(1, 7).Max(bits => AtBox([.. things.Where(one => Lines(one).All(line => (bits & (1 << line)) != 0))], Wye, leg).Magnitude);
                Assert.Equal(100 * (highest - 230) / 230, point.Legs[leg].Rise.Value!.Value.Percent, Near);
            }
        },
        iter: 40);

    [Fact]
    public void A_circuit_loses_what_its_feeder_and_its_lead_lose() => LegGigs.Wye.Select(Known).Sample(
        things =>
        {
            foreach (var circuit in Planner.Plan(LegGigs.Of(things)).Voltage.Circuits)
            {
                var thing = things[circuit.Circuit.Outlet.Number - 1];
                var alone = things.Where(one => Lines(one).All(Lines(thing).Contains)).ToList();
                var lowest = Math.Min(AtUnit(things, thing), AtUnit(alone, thing));
                var nominal = Lines(thing).Length == 1 ? 230 : 400;
                var source = Lines(thing).Length == 1 ? 230 : 230 * Math.Sqrt(3);
                Assert.Equal(100 * (source - lowest) / nominal, circuit.Drop.Value!.Value.Percent, 0.02);
            }
        },
        iter: 40);

    [Fact]
    public void The_linear_form_is_near_the_exact_one_and_never_below() => LegGigs.Wye.Sample(
        things => Assert.All(Planner.Plan(LegGigs.Of(things)).Voltage.Circuits, circuit =>
            Assert.InRange(circuit.Drop.Value!.Value.Percent, circuit.ByHand.Value!.Value.Percent - Math.Max(0.3, SecondOrder(circuit.ByHand.Value!.Value.Percent)), circuit.ByHand.Value!.Value.Percent + Near)),
        iter: 20);

    // What the linear form leaves out: half the square of the drop across the voltage, which is at most the drop itself.
    private static double SecondOrder(double percent) => percent * percent / 200;

    [Fact]
    public void A_light_leg_rises_when_another_is_loaded_alone()
    {
        var point = Planner.Plan(LegGigs.Of([new("L1", 20, 0), new("L2", 0.1, 0)])).Voltage.Points.Single();
        Assert.True(point.Legs[1].Rise.Value!.Value.Percent > 0.8);
        Assert.Equal(["L1"], point.Legs[1].RiseOn);
        Assert.True(point.Legs[1].Drop.Value!.Value.Percent < 0);
    }

    // An angle that nobody knows: no angle within its limits loses more.
    [Fact]
    public void What_nobody_knows_is_never_taken_too_well() => LegGigs.Wye.Where(things => things.Count <= 4).Sample(
        things =>
        {
            var point = Planner.Plan(LegGigs.Of(things)).Voltage.Points.Single();
            foreach (var lag in new[] { -37.0, -20, 0, 20, 37 })
            {
                var guess = things.Select(one => one with { Lag = one.Lag ?? lag }).ToList();
                for (var leg = 0; leg < 3; leg++)
                {
                    Assert.True(100 - (100 * AtBox(guess, Wye, leg).Magnitude / 230) <= point.Legs[leg].Drop.Value!.Value.Percent + 0.02);
                }
            }
        },
        iter: 40);

    [Fact]
    public void What_the_venue_has_used_up_counts()
    {
        var brief = LegGigs.Of([new("L1", 10, 0)]);
        var service = brief.Venue.Services[0] with { DropUsed = Advance.Domain.Facts.Given.Of(UnitsNet.Ratio.FromPercent(1.5), Gigs.Here) };
        var used = Planner.Plan(brief with { Venue = brief.Venue with { Services = [service] } }).Voltage.Circuits.Single();
        var own = Planner.Plan(brief).Voltage.Circuits.Single();
        Assert.Equal(own.Drop.Value!.Value.Percent + 1.5, used.Drop.Value!.Value.Percent, Near);
        Assert.Equal(own.AtEnd.Value!.Value.Volts - (230 * 0.015), used.AtEnd.Value!.Value.Volts, 1e-3);
    }

    [Fact]
    public void Volts_between_lines_are_measured_against_volts_between_lines()
    {
        var circuit = Planner.Plan(LegGigs.Of([new("L1-L2", 10, 0)])).Voltage.Circuits.Single();
        Assert.Equal("L1-L2", circuit.Leg);

        // Feeder and lead, out and back: 10 A · 2 · 2 · R of 400 V.
        Assert.Equal(100 * 40 * Lead.Real / 400, circuit.Drop.Value!.Value.Percent, 0.001);
    }

    private static IReadOnlyList<LegGigs.Drawn> Known(IReadOnlyList<LegGigs.Drawn> things) => [.. things.Select(one => one with { Lag = one.Lag ?? 12 })];

    private static int[] Lines(LegGigs.Drawn thing) => [.. thing.Phase.Split('-').Select(word => word[1] - '1')];

    private static Complex At(double length, double degrees) => Complex.FromPolarCoordinates(length, degrees * Math.PI / 180);

    private static Complex Between(int from, int to) => At(1, Wye[from]) - At(1, Wye[to]);

    private static Complex LineCurrent(IEnumerable<LegGigs.Drawn> things, double[] angles, int leg) => things.Aggregate(Complex.Zero, (sum, one) => Lines(one) switch
    {
        [var line] when line == leg => sum + At(one.Amperes, angles[line] - one.Lag!.Value),
        [var from, var to] when from == leg || to == leg => sum + ((from == leg ? 1 : -1) * At(one.Amperes, (Between(from, to).Phase * 180 / Math.PI) - one.Lag!.Value)),
        _ => sum,
    });

    private static Complex AtBox(IReadOnlyList<LegGigs.Drawn> things, double[] angles, int leg)
    {
        var neutral = Enumerable.Range(0, angles.Length).Aggregate(Complex.Zero, (sum, line) => sum + LineCurrent(things, angles, line));
        return At(230, angles[leg]) - (Lead * (LineCurrent(things, angles, leg) + neutral));
    }

    private static double AtUnit(IReadOnlyList<LegGigs.Drawn> things, LegGigs.Drawn thing)
    {
        var lines = Lines(thing);
        var box = lines is [var from, var to] ? AtBox(things, Wye, from) - AtBox(things, Wye, to) : AtBox(things, Wye, lines[0]);
        var driven = lines.Length == 2 ? Between(lines[0], lines[1]).Phase * 180 / Math.PI : Wye[lines[0]];
        return (box - (2 * Lead * At(thing.Amperes, driven - thing.Lag!.Value))).Magnitude;
    }
}
