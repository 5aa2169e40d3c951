using Advance.Domain;
using Advance.Domain.Stocks;
using Advance.Planning;
using CsCheck;

namespace Advance.Tests.Planning.Power;

/// <summary>What holds of every plan of power.</summary>
public sealed class PowerTests
{
    private const double Near = 1e-9;

    [Fact]
    public void No_load_is_lost_or_fed_twice_and_no_outlet_feeds_two_things() => PowerGigs.Any.Sample(
        brief =>
        {
            var power = Planner.Plan(brief).Power;
            var loads = power.Circuits.SelectMany(circuit => circuit.Chain.Loads).Concat(power.Unfed.SelectMany(unfed => unfed.Chain.Loads)).Select(load => load.Name);
            Assert.Equal(brief.Gig.Around.Select(thing => thing.Name).Order(StringComparer.Ordinal), loads.Order(StringComparer.Ordinal));
            var outlets = power.Circuits.Select(circuit => circuit.Name).Concat(power.Distributions.Select(point => point.FedBy).OfType<SupplyPoint>().Where(point => point.Service is null).Select(point => point.Name)).ToList();
            Assert.Equal(outlets.Count, outlets.Distinct(StringComparer.Ordinal).Count());
        },
        iter: 150);

    [Fact]
    public void A_load_is_without_an_outlet_only_when_all_are_taken() => PowerGigs.Any.Sample(
        brief =>
        {
            var power = Planner.Plan(brief).Power;
            var outlets = power.Distributions.Sum(point => point.DeviceKind!.Outlets.Sum(row => row.Numbers.Count)) - power.Feeders.Count;
            Assert.Equal(Math.Min(outlets, brief.Gig.Around.Count), power.Circuits.Count);
        },
        iter: 150);

    [Fact]
    public void What_flows_into_a_place_flows_out_of_it_in_every_state() => PowerGigs.Any.Select(WithoutAngles).Sample(
        brief =>
        {
            var power = Planner.Plan(brief).Power;
            foreach (var point in power.Services.Concat(power.Distributions).Concat(power.Feeders))
            {
                for (var state = 0; state < 5; state++)
                {
                    var below = power.Distributions.Concat(power.Circuits.Select(circuit => circuit.Outlet)).Concat(power.Feeders).Where(child => child.FedBy?.Address == point.Address);
                    var strangers = point.Service?.SharedWith.Sum(other => other.InUse.Value.Amperes) ?? 0;
                    Assert.Equal(below.Sum(child => Amperes(child, state)) + strangers, Amperes(point, state), Near);
                }
            }
        },
        iter: 150);

    [Fact]
    public void Twice_the_draws_are_twice_the_currents() => PowerGigs.Roomy.Sample(
        brief =>
        {
            var (once, twice) = (Planner.Plan(brief).Power, Planner.Plan(Scaled(brief, 2)).Power);
            Assert.Equal(2 * Amperes(once.Services[0], 0), Amperes(twice.Services[0], 0), 1e-6);
        },
        iter: 60);

    [Fact]
    public void Phasors_are_never_more_than_magnitudes() => PowerGigs.Any.Sample(
        brief =>
        {
            var (phasors, magnitudes) = (Planner.Plan(brief).Power, Planner.Plan(WithoutAngles(brief)).Power);
            Assert.Equal(magnitudes.Circuits.Select(circuit => circuit.Name), phasors.Circuits.Select(circuit => circuit.Name));
            foreach (var (one, other) in phasors.Services.Concat(phasors.Distributions).Zip(magnitudes.Services.Concat(magnitudes.Distributions)))
            {
                Assert.True(Amperes(one, 0) <= Amperes(other, 0) + Near);
            }
        },
        iter: 150);

    [Fact]
    public void The_order_in_which_things_are_written_does_not_matter() => Gen.Select(PowerGigs.Any, Gen.Int[0, 1000]).Sample(
        (brief, seed) =>
        {
            var shuffled = brief with { Gig = brief.Gig with { Around = [.. brief.Gig.Around.Index().OrderBy(one => (one.Index * 7919) ^ seed).Select(one => one.Item)] } };
            Assert.Equal(Hung(brief), Hung(shuffled));
        },
        iter: 100);

    [Fact]
    public void Other_numbers_on_a_box_change_nothing_but_the_numbers() => PowerGigs.Any.Sample(
        brief =>
        {
            var renumbered = brief with { Stock = new(brief.Stock.Kinds.ToDictionary(kind => kind.Key, kind => kind.Value with { Outlets = [.. kind.Value.Outlets.Select(row => row with { Numbers = new(row.Numbers.First + 10, row.Numbers.Last + 10) })] }, StringComparer.Ordinal)) };
            Assert.Equal(
                Planner.Plan(brief).Power.Circuits.Select(circuit => $"{circuit.Chain.Name} {circuit.Outlet.Device!.Name} {circuit.Outlet.Number + 10}"),
                Planner.Plan(renumbered).Power.Circuits.Select(circuit => $"{circuit.Chain.Name} {circuit.Outlet.Device!.Name} {circuit.Outlet.Number}"));
        },
        iter: 60);

    [Fact]
    public void One_thing_more_moves_no_circuit_once_a_plan_was_issued() => Gen.Select(PowerGigs.Roomy, Gen.Int[-40, 40]).Sample(
        (brief, x) =>
        {
            var issued = Planner.Plan(brief);
            var next = Planner.Plan(WithMore(brief, "Another", x / 10.0), issued.Chosen).Power.Circuits.ToDictionary(circuit => circuit.Chain.Name, circuit => circuit.Name);
            Assert.All(issued.Power.Circuits, circuit => Assert.Equal(circuit.Name, next[circuit.Chain.Name]));
        },
        iter: 100);

    [Fact]
    public void What_was_issued_is_kept_though_another_outlet_would_now_be_nearer()
    {
        var brief = PowerGigs.Of([(1, 0, -1)], [0, 0], services: 1, strangers: 0);
        var issued = Planner.Plan(brief);
        var moved = brief with { Gig = brief.Gig with { Around = [PowerGigs.Thing("Thing 1", 40)] } };
        Assert.NotEqual(Hung(brief), Hung(moved));
        Assert.Equal(issued.Power.Circuits[0].Name, Planner.Plan(moved, issued.Chosen).Power.Circuits[0].Name);
    }

    [Fact]
    public void A_strip_more_moves_no_strip_that_was_issued()
    {
        var brief = PowerGigs.Of([(1, 0, 0)], [0], services: 1, strangers: 0);
        Brief With(params string[] strips) => brief with
        {
            Gig = brief.Gig with { Power = brief.Gig.Power with { Distributions = [.. brief.Gig.Power.Distributions, .. strips.Select(name => PowerGigs.Distribution(name, "strip", "PD1", 0))] } },
        };
        var issued = Planner.Plan(With("strip B", "strip D"));
        Assert.Equal(["strip B PD1 outlet 4", "strip D PD1 outlet 3"], Fed(issued));
        Assert.Equal(["strip A PD1 outlet 2", "strip B PD1 outlet 4", "strip D PD1 outlet 3"], Fed(Planner.Plan(With("strip A", "strip B", "strip D"), issued.Chosen)));
    }

    private static IEnumerable<string> Fed(Plan plan) => plan.Power.Distributions.Where(point => point.Name != "PD1").Select(point => $"{point.Name} {point.FedBy!.Name}");

    [Fact]
    public void Boxes_fed_by_anything_at_all_end_in_a_plan() => Gen.Int[0, 6].Array[1, 5].Sample(
        feeds =>
        {
            string[] names = ["service 0", "service 9", "PD1", "PD2 outlet 1", "PD3", "PD1 outlet 1", "PD4 outlet 77"];
            var brief = PowerGigs.Of([(1, 0, 0), (2, 0, 1)], [0], services: 1, strangers: 0);
            var devices = feeds.Select((feed, index) => PowerGigs.Distribution($"PD{index + 1}", index % 2 == 0 ? "box" : "strip", names[feed], index)).ToList();
            var power = Planner.Plan(brief with { Gig = brief.Gig with { Power = brief.Gig.Power with { Distributions = devices } } }).Power;
            Assert.All(power.Distributions, point => Assert.True(point.Upwards.Count() < 12));
            Assert.All(power.Distributions.Where(point => point.FedBy is null), point => Assert.Contains(power.Faults, fault => fault.Device.Name == point.Name));
        },
        iter: 150);

    private static double Amperes(SupplyPoint point, int state) => point.Legs[0].InStates[state].Value!.Value.Amperes;

    private static IEnumerable<string> Hung(Brief brief) =>
        Planner.Plan(brief).Power.Circuits.Select(circuit => $"{circuit.Chain.Name} {circuit.Name}").Order(StringComparer.Ordinal);

    private static Brief WithMore(Brief brief, string name, double x) => brief with
    {
        Gig = brief.Gig with { Around = [PowerGigs.Thing(name, x), .. brief.Gig.Around] },
        Stock = new(brief.Stock.Kinds.Append(new(name, PowerGigs.Load(name, 1, 0))).ToDictionary(StringComparer.Ordinal)),
    };

    private static Brief Scaled(Brief brief, double factor) => EachMains(brief, mains => mains with { InUse = mains.InUse!.Value.Select(draw => draw * factor) });

    private static Brief WithoutAngles(Brief brief) => EachMains(brief, mains => mains with { Displacement = null });

    private static Brief EachMains(Brief brief, Func<Mains, Mains> turn) => brief with
    {
        Stock = new(brief.Stock.Kinds.ToDictionary(kind => kind.Key, kind => kind.Value.Mains is { } mains ? kind.Value with { Mains = turn(mains) } : kind.Value, StringComparer.Ordinal)),
    };
}
