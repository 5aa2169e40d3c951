using System.Numerics;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>A cable, or several in a row, and all that comes through; where its neutral is not as thick as its lines, those by themselves.</summary>
/// <param name="Name">On paper: <c>feeder to PD1</c>.</param>
/// <param name="Resistance">Of one conductor.</param>
/// <param name="Reactance">Of one conductor.</param>
/// <param name="Draws">What comes through.</param>
internal sealed record DropSegment(string Name, Figure<ElectricResistance> Resistance, Figure<ElectricResistance> Reactance, IReadOnlyList<DropDraw> Draws)
{
    /// <summary>Which conductors it stands for.</summary>
    public DropConductors Conductors { get; init; } = DropConductors.All;

    private readonly Dictionary<(string, DropCase), (Figure<ElectricPotential> Along, Figure<ElectricPotential> Across)> made = [];
    private readonly Dictionary<(string, DropCase), Complex> lost = [];
    private Doubts? restsOn;

    /// <summary>The open questions behind all that may come through, on or off: what could have been the worst case is a doubt too.</summary>
    public Doubts RestsOn => restsOn ??= Draws.Aggregate(Doubts.None, (sum, draw) => sum.With(draw.InUse.RestsOn).With(draw.AtMost.RestsOn).With(draw.Facts.RestsOn));

    private Complex Impedance => new(Resistance.Value?.Ohms ?? 0, Reactance.Value?.Ohms ?? 0);

    /// <summary>What is lost of a voltage here, as a number.</summary>
    public Complex Lost(VoltageFrame frame, DropCase found)
    {
        if (!lost.TryGetValue((frame.Name, found), out var volts))
        {
            lost[(frame.Name, found)] = volts = Running(found).Aggregate(Complex.Zero, (sum, draw) => sum + draw.Drop(frame.Factor(draw.Wiring, Conductors), Impedance, found.AtMost, found.Rises));
        }

        return volts;
    }

    /// <summary>The same with its working: along the voltage, and across it.</summary>
    public (Figure<ElectricPotential> Along, Figure<ElectricPotential> Across) Parts(VoltageFrame frame, DropCase found)
    {
        if (!made.TryGetValue((frame.Name, found), out var parts))
        {
            made[(frame.Name, found)] = parts = Make(frame, found);
        }

        return parts;
    }

    private List<DropDraw> Running(DropCase found) => [.. Draws.Where(draw => draw.Wiring.RunsOn(found.On))];

    private (Figure<ElectricPotential> Along, Figure<ElectricPotential> Across) Make(VoltageFrame frame, DropCase found)
    {
        var currents = Running(found).ConvertAll(draw => Components(draw, frame.Factor(draw.Wiring, Conductors), found));
        var (x, y) = (Total("currents along the voltage", currents.Select(one => one.Along)), Total("currents across the voltage", currents.Select(one => one.Across)));
        return (
            Sum.Of($"drop on {Name}, along", "e = R · x - X · y", Iec60364.AnnexG).Put("R", Resistance).Put("x", x).Put("X", Reactance).Put("y", y)
                .Gives((r, along, i, across) => ElectricPotential.FromVolts((r.Ohms * along.Amperes) - (i.Ohms * across.Amperes))),
            Sum.Of($"drop on {Name}, across", "f = R · y + X · x", Iec60364.AnnexG).Put("R", Resistance).Put("y", y).Put("X", Reactance).Put("x", x)
                .Gives((r, across, i, along) => ElectricPotential.FromVolts((r.Ohms * across.Amperes) + (i.Ohms * along.Amperes))));
    }

    // k counts line and neutral: 2 for the leg's own loads, 1 for what comes back by the neutral from other legs.
    private (Figure<ElectricCurrent> Along, Figure<ElectricCurrent> Across) Components(DropDraw draw, Complex factor, DropCase found)
    {
        var times = new Figure<double>(Math.Round(factor.Magnitude, 12, MidpointRounding.AwayFromZero), Doubts.None, Reason.Derived.It);
        var stands = Angle(Math.Round(factor.Phase * 180 / Math.PI, 9, MidpointRounding.AwayFromZero));
        var lag = draw.Facts.Lag ?? Angle(draw.Lag((factor * Impedance).Phase, found.Rises) * 180 / Math.PI) with { RestsOn = draw.Facts.Within.RestsOn };
        return (
            Sum.Of($"{draw.Name}, along", "x = k · I · cos(s - φ)", CircuitTheory.Phasors).Put("k", times).Put("I", draw.Current(found.AtMost)).Put("s", stands).Put("φ", lag)
                .Gives((k, current, angle, behind) => k * Math.Cos(angle.Radians - behind.Radians) * current),
            Sum.Of($"{draw.Name}, across", "y = k · I · sin(s - φ)", CircuitTheory.Phasors).Put("k", times).Put("I", draw.Current(found.AtMost)).Put("s", stands).Put("φ", lag)
                .Gives((k, current, angle, behind) => k * Math.Sin(angle.Radians - behind.Radians) * current));
    }

    private static Figure<Angle> Angle(double degrees) => new(UnitsNet.Angle.FromDegrees(degrees), Doubts.None, Reason.Derived.It);

    private static Figure<ElectricCurrent> Total(string name, IEnumerable<Figure<ElectricCurrent>> parts) =>
        Sum.Of(name, "I = Σ Iᵢ", CircuitTheory.Phasors).PutAll("Iᵢ", parts).Gives(terms => ElectricCurrent.FromAmperes(terms.Values.Sum(one => one.Amperes)));
}
