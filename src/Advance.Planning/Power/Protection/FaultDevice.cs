using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What opens a protective device in the time that is allowed.</summary>
internal static class FaultDevice
{
    private const string Fuse = "gG";

    /// <summary>The device as written, of an outlet or a service; empty where nobody says.</summary>
    public static string Written(SupplyPoint? device) => device?.Row?.Device ?? (device?.Service?.Device is { IsKnown: true } said ? said.Value : "");

    /// <summary>Whether it is a fuse whose figures the tables have.</summary>
    public static bool IsFuse(SupplyPoint? device) => Written(device).StartsWith(Fuse, StringComparison.Ordinal);

    /// <summary>The current that surely opens it at once; unknown for what is no breaker of type B, C or D.</summary>
    public static Figure<ElectricCurrent> Operating(SupplyPoint? device) => device is not null && Breakers.TypeOf(Written(device)) is { } type
        ? Sum.Of($"{device.Name}, {Written(device)}, opens at once", "Ia = k · In", Iec60898.Instantaneous)
            .Put("k", Figure.Count(Breakers.OpensFrom(type)))
            .Put("In", device.Limit)
            .Gives((times, rated) => rated * times)
        : new Figure<ElectricCurrent>(null, Doubts.Of(device?.Service?.Device?.Doubt), Reason.Derived.It);

    /// <summary>The loop with which it opens in time; unknown where its type is.</summary>
    /// <param name="device">It.</param>
    /// <param name="toEarth">Voltage of a line to earth.</param>
    /// <param name="isFinal">Whether a circuit hangs on it that people plug into, or only boxes.</param>
    public static Figure<ElectricResistance> Permitted(SupplyPoint? device, Figure<ElectricPotential> toEarth, bool isFinal) =>
        IsFuse(device) ? ByFuse(device!, toEarth, isFinal) : ByBreaker(device, toEarth);

    /// <summary>The loop with which a residual-current device opens before 50 V stand on what people touch.</summary>
    public static Figure<ElectricResistance> ByResidual(string name, Figure<ElectricCurrent> residual) =>
        Sum.Of($"{name}, loop allowed by its residual-current device", "Z = 50 / IΔn", Bs7671.EarthElectrode)
            .Put("IΔn", residual)
            .Gives(EarthElectrodes.Most);

    private static Figure<ElectricResistance> ByBreaker(SupplyPoint? device, Figure<ElectricPotential> toEarth) =>
        Sum.Of($"{device?.Name}, loop allowed", "Z = 0.95 · U₀ / Ia", Bs7671.LoopImpedance)
            .Put("U₀", toEarth)
            .Put("Ia", Operating(device))
            .Gives(FaultLoop.Permitted);

    // The tables are for 230 V; at another voltage the same current opens the fuse.
    private static Figure<ElectricResistance> ByFuse(SupplyPoint device, Figure<ElectricPotential> toEarth, bool isFinal)
    {
        var within = isFinal && device.Limit.Value is { Amperes: <= DisconnectionTimes.MostWithOutlets } && toEarth.Value is { } volts ? DisconnectionTimes.Final(EarthingSystem.TN, volts) : DisconnectionTimes.Distribution(EarthingSystem.TN);
        var tabulated = device.Limit.Value is { } rated && within is { } time ? Fuses.Loop(FuseType.GeneralPurpose, rated, time) : null;
        return Sum.Of($"{device.Name}, loop allowed", "Z = z · U₀ / 230", Bs7671.FuseLoops)
            .Put("z", new Figure<ElectricResistance>(tabulated, device.Limit.RestsOn, Reason.Derived.It))
            .Put("U₀", toEarth)
            .Gives((loop, voltage) => loop * (voltage.Volts / 230));
    }
}
