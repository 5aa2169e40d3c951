using System.Numerics;
using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Planning;
using CsCheck;
using UnitsNet;

namespace Advance.Tests.Planning.Power;

/// <summary>Kirchhoff's current law at every box of a tree of boxes: what goes in on a line is what goes out on it, as phasors.</summary>
public sealed class NestedBoxTests
{
    private const string Red = "63 A red";
    private const string Blue = "16 A blue";

    // Up to nine things with angle and third harmonic, in boxes one behind the other.
    private static readonly Gen<(double Amperes, int Lag, int Third, int Box)[]> Any =
        Gen.Select(Gen.Int[1, 100].Select(tenths => tenths / 10.0), Gen.Int[-40, 60], Gen.Int[0, 70], Gen.Int[0, 2]).Array[1, 9];

    [Fact]
    public void What_goes_in_comes_out() => Any.Sample(
        things =>
        {
            var plan = Planner.Plan(Brief(things));
            foreach (var box in plan.Power.Distributions)
            {
                foreach (var (use, index) in box.Legs.Select((use, index) => (use, index)))
                {
                    var line = box.Lines[index];
                    var loads = box.Draws.Where(draw => draw.Wiring.Lines.Contains(line)).Select(draw => things[Number(draw.Load)]).ToList();
                    Assert.Equal(Rms(loads), use.InUse.Value!.Value.Amperes, 1e-9);
                }

                Assert.Equal(things.Where(one => one.Box >= Depth(box)).Sum(one => one.Amperes), box.Draws.Sum(draw => draw.Load.InUse.Value!.Value.Amperes), 1e-9);
            }
        },
        iter: 30);

    private static int Depth(SupplyPoint box) => box.Name[^1] - '1';

    private static int Number(PowerLoad load) => int.Parse(load.Name.Split(' ')[1], System.Globalization.CultureInfo.InvariantCulture) - 1;

    // Fundamentals as complex numbers, third harmonics aligned: nobody knows how they stand.
    private static double Rms(List<(double Amperes, int Lag, int Third, int Box)> loads)
    {
        Complex first = 0;
        var third = 0.0;
        foreach (var (amperes, lag, share, _) in loads)
        {
            var fundamental = amperes / Math.Sqrt(1 + (share / 100.0 * share / 100.0));
            first += Complex.FromPolarCoordinates(fundamental, -lag * Math.PI / 180);
            third += fundamental * share / 100;
        }

        return Math.Sqrt((first.Magnitude * first.Magnitude) + (third * third));
    }

    private static Brief Brief(IReadOnlyList<(double Amperes, int Lag, int Third, int Box)> things)
    {
        var rows = Enumerable.Range(1, 9).Select(number => new OutletRow(new NumberRange(number, number), Blue, $"L{(number % 3) + 1}", "C16", PowerGigs.Amperes(16), PowerGigs.Amperes(0.03), Gigs.Here));
        var link = new OutletRow(new NumberRange(10, 10), Red, "", "C63", PowerGigs.Amperes(63), PowerGigs.Amperes(0.3), Gigs.Here);
        var supply = LegGigs.Supply("230/400 V three-phase 50 Hz");
        var box = PowerGigs.Box(Red) with { Outlets = [.. rows, link], Mains = PowerGigs.Box(Red).Mains! with { Supply = Given.Of(supply, Gigs.Here) } };
        var brief = PowerGigs.Brief(
            [.. things.Select((_, index) => PowerGigs.Thing($"Thing {index + 1}", 0))],
            [.. things.Select((thing, index) => Load($"Thing {index + 1}", thing.Amperes, thing.Lag, thing.Third)), box, PowerGigs.Lead(Blue), PowerGigs.Lead(Red)],
            [PowerGigs.Distribution("PD1", "box", "service 0", 0), PowerGigs.Distribution("PD2", "box", "PD1 outlet 10", 1), PowerGigs.Distribution("PD3", "box", "PD2 outlet 10", 2)],
            [PowerGigs.Service("0", 0, Given.Of(supply, Gigs.Here)) with { Connector = Given.Of(Red, Gigs.Here), Rating = PowerGigs.Amperes(63) }]);
        return brief with { Gig = brief.Gig with { Power = brief.Gig.Power with { Circuits = [.. things.Select((thing, index) => new CircuitRow($"PD{thing.Box + 1}", null, $"Thing {index + 1}", "", Gigs.Here))] } } };
    }

    private static Kind Load(string id, double amperes, int lag, int third)
    {
        var load = PowerGigs.Load(id, amperes, lag);
        return load with { Mains = load.Mains! with { ThirdHarmonic = Given.Of(Ratio.FromPercent(third), Gigs.Here) } };
    }
}
