using System.Numerics;
using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Venues;
using Advance.Planning;
using CsCheck;
using UnitsNet;

namespace Advance.Tests.Planning.Power;

/// <summary>Real power, unbalance, hours and fuel of generators against sums made here, load by load, without the handbook.</summary>
public sealed class GeneratorTests
{
    private const double Near = 1e-6;

    private static readonly double[] Angles = [0, -120, 120];

    // Fortescue: with α a third of a turn, I₁ = (a + αb + α²c) / 3 and I₂ = (a + α²b + αc) / 3.
    [Fact]
    public void Unbalance_is_that_of_the_line_phasors() => LegGigs.Wye.Sample(
        things =>
        {
            var lines = Enumerable.Range(0, 3).Select(leg => Line(things, leg)).ToList();
            var turn = At(1, 120);
            var forward = (lines[0] + (turn * lines[1]) + (turn * turn * lines[2])).Magnitude;
            var backward = (lines[0] + (turn * turn * lines[1]) + (turn * lines[2])).Magnitude;
            Assert.Equal(100 * backward / forward, Power(LegGigs.Of(things)).Worst.Unbalance!.Value!.Value.Percent, Near);
        },
        iter: 30);

    // DOE-HDBK-1011, AC power: real power is voltage times current times power factor, load by load; what nobody knows counts fully.
    [Fact]
    public void Real_power_is_that_of_the_loads() => LegGigs.Wye.Sample(
        things => Assert.Equal(things.Sum(Watts), (double)Power(LegGigs.Of(things)).Worst.Real.Value!.Value.Watts, Near),
        iter: 30);

    [Fact]
    public void Twice_the_current_is_twice_the_power_and_no_more_uneven() => LegGigs.Wye.Sample(
        things =>
        {
            var (once, twice) = (Power(LegGigs.Of(things)), Power(LegGigs.Of([.. things.Select(one => one with { Amperes = 2 * one.Amperes })])));
            Assert.Equal(2 * (double)once.Worst.Real.Value!.Value.Watts, (double)twice.Worst.Real.Value!.Value.Watts, Near);
            Assert.Equal(2 * (double)once.MostApparent.Apparent.Value!.Value.Voltamperes, (double)twice.MostApparent.Apparent.Value!.Value.Voltamperes, Near);
            Assert.Equal(2 * (double)once.RestartLoad.Value!.Value.Voltamperes, (double)twice.RestartLoad.Value!.Value.Voltamperes, Near);
            Assert.Equal(once.Worst.Factor.Value!.Value, twice.Worst.Factor.Value!.Value, Near);
            Assert.Equal(once.Worst.Unbalance!.Value!.Value.Percent, twice.Worst.Unbalance!.Value!.Value.Percent, Near);
        },
        iter: 20);

    // Leading by 30 degrees: 10 A of 230 V give 1150 var; a lagging load of the same takes them away.
    [Fact]
    public void Lagging_loads_take_leading_ones_away()
    {
        Assert.Equal(1150, (double)Power(LegGigs.Of([new("L1", 10, -30)])).MostLeading.Leading.Value!.Value.Voltamperes, Near);
        Assert.Equal(0, (double)Power(LegGigs.Of([new("L1", 10, -30), new("L2", 10, 30)])).MostLeading.Leading.Value!.Value.Voltamperes, Near);
    }

    // 100 kVA at 400 V are 144 A a line in hirers' tables (from memory), and 80 kW at 0.8.
    [Fact]
    public void Rated_current_engine_and_short()
    {
        var set = Set(Large);
        Assert.Equal(144.3, set.Line.Value!.Value.Amperes, 0.05);
        Assert.Equal(80, (double)set.Engine.Value!.Value.Kilowatts, Near);
        Assert.Equal(433, set.Sustained.Value!.Value.Amperes, 0.05);
        Assert.True(set.IsEngineAssumed && set.IsSustainedAssumed);
    }

    [Fact]
    public void What_height_and_heat_take_off_is_taken_off_everything()
    {
        var set = Set(Large with { Derating = Given.Of(Ratio.FromPercent(90), Gigs.Here), Engine = Given.Of(UnitsNet.Power.FromKilowatts(84), Gigs.Here) });
        Assert.Equal(0.9 * 144.3375673, set.Line.Value!.Value.Amperes, 1e-5);
        Assert.Equal(0.9 * 84, (double)set.Engine.Value!.Value.Kilowatts, Near);
    }

    // 3 · 20 A · 230 V = 13.8 kW of 16 kW is 86.25 %: 3 + 0.45 · (4 - 3) = 3.45 l/h between 75 % and 100 %; ten hours, 34.5 l, times 1.3.
    [Fact]
    public void Fuel_stands_between_two_rows_of_the_table()
    {
        var set = Set(Small, ("show", 12, 22));
        Assert.Equal(3.45, set.Spells[0].AnHour.Value!.Value.Liters, Near);
        Assert.Equal(34.5 * 1.3, set.Fuel!.Needed.Value!.Value.Liters, Near);
        Assert.Equal(86.25, set.Mean!.Value!.Value.Percent, Near);
        Assert.Equal(0, set.Underloaded!.Value!.Value.Hours, Near);
    }

    // 13 l, less the margin 10 l; 3.45 l/h all the time. Two hours of changeover take 6.9 l, the rest lasts 3.1 / 3.45 h = 53.9 min of the show.
    [Fact]
    public void A_tank_runs_dry_within_a_show_and_is_filled_before_it()
    {
        var fuel = Set(Small with { Tank = Given.Of(Volume.FromLiters(13), Gigs.Here) }, ("changeover", 10, 12), ("show", 12, 22)).Fuel!;
        Assert.Equal("12:53", fuel.Dry!.Value.ToString());
        Assert.Equal(ShowState.Changeover, fuel.RefuelIn!.Power.State);
        Assert.Null(Set(Small with { Tank = Given.Of(Volume.FromLiters(100), Gigs.Here) }, ("show", 12, 22)).Fuel!.DryAt);
    }

    [Fact]
    public void Above_the_last_row_of_the_table_nobody_knows()
    {
        var set = Set(Small with { Fuel = [new FuelRow(Ratio.FromPercent(50), Volume.FromLiters(2), Gigs.Here)] }, ("show", 12, 22));
        Assert.Null(set.Spells[0].AnHour.Value);
        Assert.Null(set.Fuel!.Needed.Value);
    }

    [Fact]
    public void A_set_of_which_nothing_is_known_is_asked_for_once()
    {
        var plan = Planner.Plan(Brief(new Generator { Rating = Given.Unknown<ElectricApparentPower>(Gigs.Here, new Doubt("rating", Gigs.Here)), At = Gigs.Here }, []));
        var about = plan.Findings.Where(finding => finding.Where.Text?.StartsWith("power/service 0/generator", StringComparison.Ordinal) ?? false);
        Assert.Equal(["power/generator-not-known"], about.Select(finding => finding.Rule));
    }

    [Fact]
    public void A_service_that_is_no_generator_has_no_plan_of_one() => Assert.Empty(Planner.Plan(LegGigs.Of([new("L1", 10, 0)])).Power.Generators);

    private static Generator Large => new() { Rating = Given.Of(ElectricApparentPower.FromKilovoltamperes(100), Gigs.Here), At = Gigs.Here };

    private static Generator Small => new()
    {
        Rating = Given.Of(ElectricApparentPower.FromKilovoltamperes(20), Gigs.Here),
        Fuel = [new FuelRow(Ratio.FromPercent(100), Volume.FromLiters(4), Gigs.Here), new FuelRow(Ratio.FromPercent(75), Volume.FromLiters(3), Gigs.Here)],
        At = Gigs.Here,
    };

    private static GeneratorPlan Set(Generator set, params (string State, int From, int To)[] hours) => Planner.Plan(Brief(set, hours)).Power.Generators.Single();

    private static Brief Brief(Generator set, (string State, int From, int To)[] hours)
    {
        var brief = LegGigs.Of([new("L1", 20, 0, PowerFactor: 1), new("L2", 20, 0, PowerFactor: 1), new("L3", 20, 0, PowerFactor: 1)]);
        return brief with
        {
            Gig = brief.Gig with { ShowStates = [.. hours.Select(one => new ShowStateRow(one.State == "show" ? ShowState.Show : ShowState.Changeover, Given.Of(new MomentRange(Moment.At(one.From, 0), Moment.At(one.To, 0)), Gigs.Here), Gigs.Here))] },
            Venue = brief.Venue with { Services = [brief.Venue.Services[0] with { Generator = set }] },
        };
    }

    private static ServicePower Power(Brief brief) => Planner.Plan(brief).Power.Powers.Single();

    private static double Watts(LegGigs.Drawn thing) => (thing.Phase.Contains('-', StringComparison.Ordinal) ? 400 : 230) * thing.Amperes * (thing.Lag is { } lag ? Math.Cos(lag * Math.PI / 180) * First(thing) / thing.Amperes : 1);

    private static double First(LegGigs.Drawn thing) => thing.Amperes / Math.Sqrt(1 + (thing.Third * thing.Third / 10000) + (thing.Fifth * thing.Fifth / 10000));

    private static Complex At(double length, double degrees) => Complex.FromPolarCoordinates(length, degrees * Math.PI / 180);

    private static Complex Line(IEnumerable<LegGigs.Drawn> things, int leg) => things.Aggregate(Complex.Zero, (sum, one) => sum + OnLine(one, leg));

    private static Complex OnLine(LegGigs.Drawn thing, int leg)
    {
        int[] lines = [.. thing.Phase.Split('-').Select(word => word[1] - '1')];
        if (!lines.Contains(leg))
        {
            return 0;
        }

        var driven = lines is [var from, var to] ? (At(1, Angles[from]) - At(1, Angles[to])).Phase * 180 / Math.PI : Angles[leg];
        return At(First(thing), driven - (thing.Lag ?? 0)) * (leg == lines[0] ? 1 : -1);
    }
}
