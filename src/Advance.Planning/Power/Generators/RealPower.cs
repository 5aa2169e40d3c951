using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Power of single draws at a service.</summary>
/// <param name="toNeutral">Voltage from a line to the neutral.</param>
/// <param name="between">Voltage between two lines.</param>
internal sealed class RealPower(Figure<ElectricPotential> toNeutral, Figure<ElectricPotential> between)
{
    /// <summary>Real power of what is drawn: <c>P = n · U · I · k</c>. Three lines count three times; so does what lies on a line that nobody knows.</summary>
    public Figure<UnitsNet.Power> Of(WiredDraw draw) =>
        Sum.Of($"{draw.Name}, real power{Told(draw)}", "P = n · U · I · k", DoeHandbook.AcPower)
            .Put("n", Figure.Count(Times(draw.Wiring)))
            .Put("U", VoltageOf(draw.Wiring))
            .Put("I", draw.Current)
            .Put("k", FactorOf(draw.Load))
            .Gives((times, volts, amperes, factor) => UnitsNet.Power.FromWatts(times * volts.Volts * amperes.Amperes * factor));

    /// <summary>Apparent power of a current at a place, whatever else flows there: <c>S = n · U · I</c>.</summary>
    public Figure<ElectricApparentPower> Apparent(string name, MainsWiring wiring, Figure<ElectricCurrent> current) =>
        Sum.Of($"{name}, apparent power", "S = n · U · I", DoeHandbook.AcPower)
            .Put("n", Figure.Count(Times(wiring)))
            .Put("U", VoltageOf(wiring))
            .Put("I", current)
            .Gives((times, volts, amperes) => ElectricApparentPower.FromVoltamperes(times * volts.Volts * amperes.Amperes));

    /// <summary>Reactive power of a load whose displacement is known, less than nought where it leads: <c>q = n · U · I₁ · sin(φ)</c>.</summary>
    public Figure<ElectricApparentPower> Reactive(WiredDraw draw) =>
        Sum.Of($"{draw.Name}, reactive power", "q = n · U · I₁ · sin(φ)", DoeHandbook.AcPower)
            .Put("n", Figure.Count(Times(draw.Wiring)))
            .Put("U", VoltageOf(draw.Wiring))
            .Put("I₁", FirstOf(draw))
            .Put("φ", draw.Load!.Lag!)
            .Gives((times, volts, amperes, lag) => ElectricApparentPower.FromVoltamperes(times * volts.Volts * amperes.Amperes * Math.Sin(lag.Radians)));

    /// <summary>Whether somebody gave how far its current lags or leads.</summary>
    public static bool IsReactive(WiredDraw draw) => draw.Load?.Lag?.Value is not null;

    /// <summary>Whether its power factor is nobody's word.</summary>
    public static bool IsAssumed(PowerLoad? load) => load is not null && load.PowerFactor?.Value is null && load.Lag?.Value is null;

    /// <summary>The fundamental of what is drawn; all of it where nobody knows of harmonics.</summary>
    public static Figure<ElectricCurrent> FirstOf(WiredDraw draw) => HarmonicsOf(draw.Load) is { Count: > 0 } harmonics ? LegSum.Fundamental(draw.Current, harmonics) : draw.Current;

    private static List<Harmonic> HarmonicsOf(PowerLoad? load) => load is null ? []
        : [.. load.ThirdHarmonic is { Value: not null } third ? [new Harmonic(3, third)] : Array.Empty<Harmonic>(), .. load.HigherHarmonics];

    private static string Told(WiredDraw draw) => (draw.Wiring.Kind, IsAssumed(draw.Load)) switch
    {
        (MainsWiringKind.SomeLine, _) => ", on each line since nobody knows on which",
        (_, true) => ", power factor not known and taken as 1",
        _ => "",
    };

    // What has angle and harmonics has its power factor in them.
    private static Figure<double> FactorOf(PowerLoad? load) => load switch
    {
        { PowerFactor: { Value: not null } factor } => factor,
        { Lag: { Value: not null } lag } => Sum.Of("power factor, from displacement and harmonics", "k = cos(φ) / √(1 + Σ (hᵢ / 100)²)", DoeHandbook.AcPower)
            .Put("φ", lag)
            .PutAll("hᵢ", HarmonicsOf(load).Select(one => LegSum.Percent(one.Share)))
            .Gives((angle, shares) => Math.Cos(angle.Radians) / Math.Sqrt(1 + shares.Values.Sum(share => share / 100 * (share / 100)))),
        _ => new Figure<double>(1, Doubts.None, Reason.Derived.It),
    };

    private Figure<ElectricPotential> VoltageOf(MainsWiring wiring) => wiring.Kind == MainsWiringKind.BetweenLines ? between : toNeutral;

    private static int Times(MainsWiring wiring) => wiring.Kind is MainsWiringKind.BetweenLines or MainsWiringKind.ToNeutral ? 1 : wiring.Lines.Count;
}
