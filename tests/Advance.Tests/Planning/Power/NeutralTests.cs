using System.Numerics;
using Advance.Domain;
using Advance.Planning;
using CsCheck;

namespace Advance.Tests.Planning.Power;

/// <summary>Legs and neutrals of a plan against complex numbers added here, load by load, without the handbook.</summary>
public sealed class NeutralTests
{
    private const double Near = 1e-6;
    private const double Unknown = 37;

    private static readonly double[] WyeAngles = [0, -120, 120];
    private static readonly double[] SplitAngles = [0, 180];

    [Fact]
    public void A_leg_carries_the_sum_of_its_phasors_and_never_less() => LegGigs.Wye.Sample(things => Legs(things, WyeAngles, LegGigs.Of(things)), iter: 40);

    [Fact]
    public void A_leg_of_a_split_phase_carries_the_sum_of_its_phasors_and_never_less() => LegGigs.Split.Sample(things => Legs(things, SplitAngles, Split(things)), iter: 40);

    [Fact]
    public void A_neutral_is_the_worst_over_all_sets_of_legs() => LegGigs.Wye.Select(Known).Sample(things => Worst(things, WyeAngles, LegGigs.Of(things)), iter: 40);

    [Fact]
    public void A_neutral_of_a_split_phase_is_the_worst_over_all_sets_of_legs() => LegGigs.Split.Select(Known).Sample(things => Worst(things, SplitAngles, Split(things)), iter: 40);

    // With one angle and one spectrum no choice of single loads is worse than a choice of legs.
    [Fact]
    public void No_choice_of_loads_gives_a_neutral_more_than_the_worst_set_of_legs() => LegGigs.Wye.Select(things => (IReadOnlyList<LegGigs.Drawn>)[.. things.Select(one => one with { Lag = 20, Third = 30, Fifth = 0 })]).Sample(
        things =>
        {
            var worst = Neutral(LegGigs.Of(things));
            for (var bits = 0; bits < 1 << things.Count; bits++)
            {
                var some = things.Where((_, index) => (bits & (1 << index)) != 0).ToList();
                Assert.True(NeutralOf(some, WyeAngles) <= worst + Near);
            }
        },
        iter: 40);

    [Fact]
    public void An_angle_that_nobody_knows_is_never_taken_too_well() => LegGigs.Wye.Where(things => things.Count <= 4).Sample(
        things =>
        {
            var worst = Neutral(LegGigs.Of(things));
            foreach (var guess in Guesses([.. things]))
            {
                Assert.True(Sets(3).Max(on => NeutralOf(On(guess, on), WyeAngles)) <= worst + Near);
            }
        },
        iter: 40);

    // And not too badly either: the sum is reached by some angle within its limits.
    [Fact]
    public void One_load_of_unknown_angle_on_each_leg_reaches_its_bound()
    {
        var plan = Neutral(LegGigs.Of([new("L1", 10, null), new("L2", 10, null), new("L3", 10, null)]));
        var best = 0.0;
        for (var a = -Unknown; a <= Unknown; a += 1)
        {
            for (var b = -Unknown; b <= Unknown; b += 1)
            {
                for (var c = -Unknown; c <= Unknown; c += 1)
                {
                    var sum = At(10, 0 - a) + At(10, -120 - b) + At(10, 120 - c);
                    best = Math.Max(best, sum.Magnitude);
                }
            }
        }

        // Two legs on: 10 A each, 46° apart at the least.
        best = Math.Max(best, (At(10, -Unknown) + At(10, -120 + Unknown)).Magnitude);
        Assert.Equal(best, plan, 1e-3);
    }

    [Fact]
    public void A_power_factor_limits_the_angle()
    {
        // 0.9 without harmonics: 25.84° to either side; on two legs the loads come to 68.3° of each other.
        var plan = Neutral(LegGigs.Of([new("L1", 10, null, PowerFactor: 0.9), new("L2", 10, null, PowerFactor: 0.9)]));
        var limit = Math.Acos(0.9) * 180 / Math.PI;
        Assert.Equal((At(10, -limit) + At(10, -120 + limit)).Magnitude, plan, 1e-6);
    }

    [Theory]
    [InlineData("L1", "L1 and L2 and L3")]
    [InlineData("", "L1 and L2")]
    public void The_worst_set_is_named(string lone, string on)
    {
        List<LegGigs.Drawn> things = lone.Length > 0 ? [new(lone, 10, 0)] : [new("L1", 10, 60), new("L2", 10, -60), new("L3", 10, 0)];
        Assert.Contains(on, Planner.Plan(LegGigs.Of(things)).Power.Services[0].Neutral!.InUse.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Twice_the_draws_are_twice_the_neutral_and_the_legs() => LegGigs.Wye.Sample(
        things =>
        {
            var (once, twice) = (Service(LegGigs.Of(things)), Service(LegGigs.Of([.. things.Select(one => one with { Amperes = 2 * one.Amperes })])));
            Assert.Equal(2 * once.Neutral!.InUse.Current.Value!.Value.Amperes, twice.Neutral!.InUse.Current.Value!.Value.Amperes, 1e-6);
            Assert.All(once.Legs.Zip(twice.Legs), legs => Assert.Equal(2 * legs.First.InUse.Value!.Value.Amperes, legs.Second.InUse.Value!.Value.Amperes, 1e-6));
        },
        iter: 40);

    [Fact]
    public void A_three_phase_load_without_neutral_leaves_the_neutral_alone()
    {
        LegGigs.Drawn motor = new("L1-L2-L3", 10, 30, Third: 40);
        Assert.Equal(0, Neutral(LegGigs.Of([motor], takes: "400 V three-phase")), Near);

        // With it 3 · h · I₁ comes back in it; with one line lost two thirds of that, and the fundamental of a whole line.
        var first = 10 / Math.Sqrt(1.16);
        Assert.Equal(Math.Sqrt((first * first) + (0.8 * first * 0.8 * first)), Neutral(LegGigs.Of([motor], takes: "230/400 V three-phase")), Near);
    }

    private static void Legs(IReadOnlyList<LegGigs.Drawn> things, double[] angles, Brief brief)
    {
        var service = Service(brief);
        foreach (var (index, use) in service.Legs.Index())
        {
            var known = LegOf(Known(things), angles, index);
            var open = things.Where(one => one.Lag is null && Lines(one).Contains(index)).Sum(one => one.Amperes);
            Assert.True(use.InUse.Value!.Value.Amperes >= known - open - Near);
            if (open == 0)
            {
                // Harmonics of loads between lines and to neutral are taken as aligned, so the plan may be above.
                Assert.True(use.InUse.Value!.Value.Amperes >= known - Near, $"{use.InUse.Value} under {known}");
            }

            Assert.True(use.InUse.Value!.Value.Amperes <= things.Where(one => Lines(one).Contains(index)).Sum(one => one.Amperes) + Near);
        }
    }

    private static void Worst(IReadOnlyList<LegGigs.Drawn> things, double[] angles, Brief brief) =>
        Assert.Equal(Sets(angles.Length).Max(on => NeutralOf(On(things, on), angles)), Neutral(brief), Near);

    private static Brief Split(IReadOnlyList<LegGigs.Drawn> things) => LegGigs.Of(things, "120/240 V split-phase 60 Hz");

    private static SupplyPoint Service(Brief brief)
    {
        var power = Planner.Plan(brief).Power;
        Assert.Empty(power.Unfed);
        return power.Services[0];
    }

    private static double Neutral(Brief brief) => Service(brief).Neutral?.InUse.Current.Value!.Value.Amperes ?? 0;

    private static IReadOnlyList<LegGigs.Drawn> Known(IReadOnlyList<LegGigs.Drawn> things) => [.. things.Select(one => one with { Lag = one.Lag ?? 12 })];

    private static int[] Lines(LegGigs.Drawn thing) => [.. thing.Phase.Split('-').Select(word => word[1] - '1')];

    private static IEnumerable<int[]> Sets(int legs) => Enumerable.Range(0, 1 << legs).Select(bits => Enumerable.Range(0, legs).Where(leg => (bits & (1 << leg)) != 0).ToArray());

    private static List<LegGigs.Drawn> On(IReadOnlyList<LegGigs.Drawn> things, int[] on) => [.. things.Where(one => Lines(one).All(on.Contains))];

    private static IEnumerable<List<LegGigs.Drawn>> Guesses(List<LegGigs.Drawn> things)
    {
        var open = things.FindIndex(one => one.Lag is null);
        return open < 0
            ? [things]
            : new[] { -Unknown, -Unknown / 2, 0, Unknown / 2, Unknown }.SelectMany(lag => Guesses([.. things.Select((one, index) => index == open ? one with { Lag = lag } : one)]));
    }

    private static double NeutralOf(IReadOnlyList<LegGigs.Drawn> things, double[] angles) => Rms(order =>
        things.Where(one => Lines(one).Length == 1).Aggregate(Complex.Zero, (sum, one) => sum + Phasor(one, order, angles[Lines(one)[0]])));

    private static double LegOf(IReadOnlyList<LegGigs.Drawn> things, double[] angles, int leg) => Rms(order => things.Where(one => Lines(one).Contains(leg)).Aggregate(Complex.Zero, (sum, one) =>
    {
        if (Lines(one) is not [var from, var to])
        {
            return sum + Phasor(one, order, angles[leg]);
        }

        var between = (At(1, angles[from]) - At(1, angles[to])).Phase * 180 / Math.PI;
        return sum + ((leg == from ? 1 : -1) * Phasor(one, order, between));
    }));

    private static Complex Phasor(LegGigs.Drawn thing, int order, double volts)
    {
        var first = thing.Amperes / Math.Sqrt(1 + (thing.Third * thing.Third / 10000) + (thing.Fifth * thing.Fifth / 10000));
        return order == 1 ? At(first, volts - thing.Lag!.Value) : At(first * (order == 3 ? thing.Third : thing.Fifth) / 100, order * volts);
    }

    private static double Rms(Func<int, Complex> of) => Math.Sqrt(new[] { 1, 3, 5 }.Sum(order => of(order).Magnitude * of(order).Magnitude));

    private static Complex At(double length, double degrees) => Complex.FromPolarCoordinates(length, degrees * Math.PI / 180);
}
