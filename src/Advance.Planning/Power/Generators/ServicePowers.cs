using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Works out real and apparent power of services.</summary>
internal sealed class ServicePowers(NodeDraws gather)
{
    private const int ThreeLegs = 3;

    /// <summary>Of one service, as node and as the point made from it.</summary>
    public ServicePower Of(PowerNode node, SupplyPoint point)
    {
        var voltage = ToNeutral(node);
        var power = new RealPower(voltage, Between(node, voltage));
        return new ServicePower(
            point,
            [.. StateShares.States.Select((state, index) => At(node, point, state, index, power, voltage))],
            [.. point.Loads.Where(RealPower.IsAssumed).Select(load => load.Name)])
        {
            Voltage = voltage,
            RestartInrush = InrushOf(point),
            RestartLoad = RestartOf(point, power),
        };
    }

    private StatePower At(PowerNode node, SupplyPoint point, ShowState state, int index, RealPower power, Figure<ElectricPotential> voltage)
    {
        var draws = gather.At(node, state, atMost: false);
        var where = $"{point.Name}, {StateShares.Word(state)}";
        var real = Total($"{where}, real power", draws.Select(power.Of));
        var apparent = Apparent($"{where}, apparent power", voltage, point.Legs.Select(leg => leg.InStates[index]));
        return new StatePower(state, real, apparent, Total($"{where}, real power of what is ours", draws.Where(draw => draw.Load is not null).Select(power.Of)), Leading(where, draws, power))
        {
            Factor = FactorOf(where, real, apparent),
            Unbalance = point.Legs.Count == ThreeLegs ? UnevenLegs.Of(where, draws, node.Angles) : null,
        };
    }

    private static Figure<UnitsNet.Power> Total(string name, IEnumerable<Figure<UnitsNet.Power>> parts) =>
        Sum.Of(name, "P = Σ pᵢ", DoeHandbook.AcPower).PutAll("pᵢ", parts).Gives(terms => UnitsNet.Power.FromWatts(terms.Values.Sum(part => (double)part.Watts)));

    /// <summary>Voltage to neutral times the currents of lines.</summary>
    public static Figure<ElectricApparentPower> Apparent(string name, Figure<ElectricPotential> voltage, IEnumerable<Figure<ElectricCurrent>> lines) =>
        Sum.Of(name, "S = U · Σ Iᵢ", DoeHandbook.AcPower)
            .Put("U", voltage)
            .PutAll("Iᵢ", lines)
            .Gives((volts, currents) => ElectricApparentPower.FromVoltamperes(volts.Volts * currents.Values.Sum(one => one.Amperes)));

    private static Figure<double> FactorOf(string where, Figure<UnitsNet.Power> real, Figure<ElectricApparentPower> apparent) =>
        Sum.Of($"{where}, power factor", "k = P / S", DoeHandbook.AcPower)
            .Put("P", real)
            .Put("S", apparent.Value is { } value && value.Voltamperes > 0 ? apparent : apparent with { Value = null })
            .Gives((watts, voltamperes) => (double)watts.Watts / (double)voltamperes.Voltamperes);

    private static Figure<ElectricApparentPower> Leading(string where, IEnumerable<WiredDraw> draws, RealPower power) =>
        Sum.Of($"{where}, leading reactive power, of loads whose displacement is known", "Q = max(0, -Σ qᵢ)", DoeHandbook.AcPower)
            .PutAll("qᵢ", draws.Where(RealPower.IsReactive).Select(power.Reactive))
            .Gives(terms => ElectricApparentPower.FromVoltamperes(Math.Max(0, -terms.Values.Sum(part => (double)part.Voltamperes))));

    // Inrush is given as a peak; a breaker answers to the rms value of the wave, pole by pole.
    private static Figure<ElectricCurrent> InrushOf(SupplyPoint point)
    {
        var poles = point.Lines.Select(line => InrushOn(point, line)).ToList();
        return poles.Find(pole => pole.Value is null) ?? poles.MaxBy(pole => pole.Value!.Value.Amperes)!;
    }

    private static Figure<ElectricCurrent> InrushOn(SupplyPoint point, int line) =>
        Sum.Of($"{point.Name}, inrush of all that starts with the mains, as rms", "I = Σ iᵢ / √2", Publication.Arithmetic)
            .PutAll("iᵢ", point.Draws.Where(draw => draw.Wiring.Lines.Contains(line) && !StartsLater(draw.Load)).Select(draw => draw.Load.Inrush))
            .Gives(peaks => ElectricCurrent.FromAmperes(peaks.Values.Sum(peak => peak.Amperes) / Math.Sqrt(2)));

    private static Figure<ElectricApparentPower> RestartOf(SupplyPoint point, RealPower power) =>
        Sum.Of($"{point.Name}, load of all that starts with the mains", "S = Σ sᵢ", Publication.Arithmetic)
            .PutAll("sᵢ", point.Draws.Where(draw => !StartsLater(draw.Load)).Select(draw => power.Apparent(draw.Load.Name, draw.Wiring, draw.Load.InUse)))
            .Gives(terms => ElectricApparentPower.FromVoltamperes(terms.Values.Sum(part => (double)part.Voltamperes)));

    private static bool StartsLater(PowerLoad load) => load.Piece?.Kind?.Mains?.StartsLater is { IsKnown: true, Value: true };

    // The most that may arrive: power is then not told too small.
    private static Figure<ElectricPotential> ToNeutral(PowerNode node) => VoltageOf(node, node.Supply?.Voltages[0].Most);

    private static Figure<ElectricPotential> Between(PowerNode node, Figure<ElectricPotential> toNeutral) =>
        node.Supply?.BetweenLines is { } volts ? VoltageOf(node, volts) : toNeutral;

    private static Figure<ElectricPotential> VoltageOf(PowerNode node, ElectricPotential? volts) =>
        new(volts, Doubts.Of(node.Service?.Supply.Doubt), new Reason.Fixed(node.Service?.Supply.At ?? Mark.Nowhere));
}
