using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Stocks;
using Advance.Planning;

namespace Advance.Tests.Planning.Power;

/// <summary>Several circuits in one cable, and the box at its end.</summary>
public sealed class LoomTests
{
    private const string Blue = "16 A blue";
    private const string BigBlue = "32 A blue";
    private const string Loom = "loom-4";

    private static readonly Plan Made = Planner.Plan(Brief());

    [Fact]
    public void Each_circuit_comes_from_an_outlet_with_its_own_device() => Assert.All(
        Made.Power.Circuits,
        circuit =>
        {
            Assert.Equal("LX", circuit.Outlet.LoomEnd?.Name);
            Assert.Equal(circuit.Outlet.Number, circuit.Outlet.FedBy!.Number);
            Assert.Equal("PD1", circuit.Outlet.FedBy.Device!.Name);
            Assert.Equal(circuit.Outlet.FedBy, circuit.Outlet.Protection);
        });

    [Fact]
    public void Nothing_is_lost_or_counted_twice()
    {
        Assert.Equal(4, Made.Power.Circuits.Count);
        Assert.Equal(1.0 + 2 + 3 + 4, Made.Power.Services.Single().Worst.InUse.Value!.Value.Amperes, 1e-9);
        Assert.Equal(1.0 + 2 + 3 + 4, Made.Power.Distributions.Single(box => box.Name == "LX").Worst.InUse.Value!.Value.Amperes, 1e-9);
        Assert.Equal([1, 2, 3, 4], Made.Power.Feeders.Select(feeder => feeder.Worst.InUse.Value!.Value.Amperes).Order());
    }

    [Fact]
    public void One_cable_is_laid_from_all_of_them()
    {
        var link = Made.Power.Links.Single(link => link.To.Port.Device == "LX");
        Assert.Equal("PD1 outlet 1-4", link.From.Port.ToString());
        Assert.Single(Made.Cables.Of(link.Address)!.Leads);
    }

    // Feeder, loom and lead are 20 m of 2.5 mm² each (IEC 60228 class 5, 7.98 and 8.21 Ω/km at 20 °C in the tables; 60 °C by 0.00393): in the loom only
    // the circuit's own current flows, in the feeder all of it.
    [Fact]
    public void In_the_loom_a_circuit_has_conductors_of_its_own()
    {
        const double Conductor = 8.21 * (1 + (0.00393 * 40)) * 0.02;
        foreach (var circuit in Made.Voltage.Circuits)
        {
            var own = circuit.Circuit.Use.InUse.Value!.Value.Amperes;
            Assert.Equal(100 * 2 * Conductor * (10 + own + own) / 230, circuit.Drop.Value!.Value.Percent, 0.02);
        }
    }

    private static Brief Brief() => PowerGigs.Brief(
        [.. Enumerable.Range(1, 4).Select(number => PowerGigs.Thing($"Thing {number}", number - 2))],
        [
            .. Enumerable.Range(1, 4).Select(number => PowerGigs.Load($"Thing {number}", number, 0)),
            PowerGigs.Box(BigBlue) with { Outlets = [new OutletRow(new NumberRange(1, 4), Loom, "", "C16", PowerGigs.Amperes(16), PowerGigs.Amperes(0.03), Gigs.Here)] },
            PowerGigs.Box(Loom, "end") with { Outlets = [new OutletRow(new NumberRange(1, 4), Blue, "", "", PowerGigs.Amperes(16), PowerGigs.Amperes(0.03), Gigs.Here)] },
            PowerGigs.Lead(Blue),
            PowerGigs.Lead(BigBlue),
            PowerGigs.Lead(Loom),
        ],
        [PowerGigs.Distribution("PD1", "box", "service 0", 0), PowerGigs.Distribution("LX", "end", "PD1", 1) with { FedBy = Given.Of(new PortRange("PD1", PortKind.Outlet, new NumberRange(1, 4)), Gigs.Here) }],
        [PowerGigs.Service("0", 0)]);
}
