using Advance.Domain.Facts;
using Advance.Domain.Venues;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary>
/// Whether a fault or an overload opens only the nearest device. Every two devices in a row on the way from a circuit in use to its service,
/// each once.
/// </summary>
/// <param name="Overcurrent">Fuses and breakers.</param>
/// <param name="Residual">Residual-current devices.</param>
public sealed record Selectivity(IReadOnlyList<DevicePair> Overcurrent, IReadOnlyList<DevicePair> Residual)
{
    // Fuses gG from 16 A on are selective at this ratio: IEC 60269-2, from memory. Between breakers only the maker's table shows it.
    private const double FuseRatio = 1.6;

    /// <summary>Of the fuses and breakers in a box against what is before them, the worst; null where nothing is before them.</summary>
    /// <param name="box">Its name.</param>
    public Selective? OvercurrentOf(string box) => Worst(Overcurrent, box);

    /// <summary>Of the residual-current devices in a box against those before them, the worst; null where no two are in a row.</summary>
    /// <param name="box">Its name.</param>
    public Selective? ResidualOf(string box) => Worst(Residual, box);

    internal static Selectivity Of(PowerPlan power) => new(
        [.. Pairs(power, outlet => outlet.Upwards.Where(HasDevice), point => point).Select(pair => new DevicePair(pair.Farther, pair.Nearer, OfDevices(pair.Farther, pair.Nearer), RestsOn(pair.Farther, pair.Nearer)))],
        [.. Pairs(power, ResidualDevice.Above, device => device.Point).Select(pair => new DevicePair(pair.Farther.Point, pair.Nearer.Point, OfResidual(pair.Farther, pair.Nearer), pair.Nearer.Rating.RestsOn.With(pair.Farther.DelayRestsOn)))]);

    private static IEnumerable<(T Farther, T Nearer)> Pairs<T>(PowerPlan power, Func<SupplyPoint, IEnumerable<T>> above, Func<T, SupplyPoint> place) => power.Circuits
        .Select(circuit => above(circuit.Outlet).ToList())
        .SelectMany(devices => devices.Skip(1).Zip(devices, (farther, nearer) => (farther, nearer)))
        .DistinctBy(pair => (place(pair.farther).Address, place(pair.nearer).Address));

    private static bool HasDevice(SupplyPoint point) => point.Service is not null || point.Row is { Device.Length: > 0 };

    // A device that lets no more through than the one behind it opens first in an overload.
    private static Selective OfDevices(SupplyPoint farther, SupplyPoint nearer)
    {
        if (farther.Limit.Value is not { } before || nearer.Limit.Value is not { } own)
        {
            return Selective.NotShown;
        }

        var areFuses = FaultDevice.IsFuse(farther) && FaultDevice.IsFuse(nearer);
        return before.Amperes <= own.Amperes ? Selective.No
            : !areFuses ? Selective.NotShown
            : before.Amperes >= FuseRatio * own.Amperes * (1 - 1e-9) ? Selective.Yes : Selective.No;
    }

    // The ratio and the delay are those of devices by IEC.
    private static Selective OfResidual(ResidualDevice farther, ResidualDevice nearer) => nearer.Point.Rules == WiringRules.Nec
        ? Selective.NotShown
        : ResidualDevices.IsSelective(farther.Rating.Value!.Value, farther.IsDelayed, nearer.Rating.Value!.Value) switch
        {
            null => Selective.NotShown,
            true => Selective.Yes,
            false => Selective.No,
        };

    private static Doubts RestsOn(SupplyPoint farther, SupplyPoint nearer) =>
        farther.Limit.RestsOn.With(nearer.Limit.RestsOn).With(Doubts.Of(farther.Service?.Device?.Doubt));

    private static Selective? Worst(IEnumerable<DevicePair> pairs, string box) =>
        pairs.Where(pair => pair.Box == box).Select(pair => (Selective?)pair.Is).Max();
}
