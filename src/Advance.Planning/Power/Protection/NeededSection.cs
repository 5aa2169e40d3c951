using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>How thick a conductor must be to outlive what its device lets through until it is open.</summary>
/// <param name="Section">mm²; unknown where nobody knows what the device lets through.</param>
/// <param name="IsBound">Whether that is only the most it can be, and its maker's curve says less.</param>
public sealed record NeededSection(Figure<double> Section, bool IsBound)
{
    private const double LongestSeconds = 5;

    internal static NeededSection Of(string name, SupplyPoint? device, Figure<ElectricCurrent> largest, double? k)
    {
        var (energy, isBound) = LetThrough(device, largest);
        var section = Sum.Of($"{name}, section that outlives a fault", "S = √E / k", Bs7671.Table431)
            .Put("E", energy)
            .Put("k", new Figure<double>(k, Doubts.None, Reason.Derived.It))
            .Gives(Adiabatic.LeastSection);
        return new NeededSection(section, isBound);
    }

    private static (Figure<double> Energy, bool IsBound) LetThrough(SupplyPoint? device, Figure<ElectricCurrent> largest) =>
        device is null ? (new Figure<double>(null, Doubts.None, Reason.Derived.It), false)
        : Breakers.TypeOf(FaultDevice.Written(device)) is { } type ? OfBreaker(device, type, largest)
        : (OfFuse(device), false);

    // Open within 0.1 s whatever comes; the small ones limit the current besides, and the lesser of both holds.
    private static (Figure<double> Energy, bool IsBound) OfBreaker(SupplyPoint device, BreakerType type, Figure<ElectricCurrent> largest)
    {
        var bound = Sum.Of($"{device.Name}, let through until it is open, A²s", "E = I² · t", Iec60898.Time)
            .Put("I", largest)
            .Put("t", new Figure<Duration>(Breakers.AtOnce, Doubts.None, Reason.Derived.It))
            .Gives(Adiabatic.LetThrough);
        var limit = device.Limit.Value is { } rated && largest.Value is { } current ? BreakerEnergy.Most(type, rated, current) : null;
        return limit is { } most && bound.Value > most
            ? (Sum.Of($"{device.Name}, let through as it limits the current, A²s", "E = e", Iec60898.EnergyClass)
                .Put("e", new Figure<double>(most, device.Limit.RestsOn.With(largest.RestsOn), Reason.Derived.It))
                .Gives(energy => energy), false)
            : (bound, true);
    }

    // What opens it in 5 s; more current opens it so much sooner that it lets through less.
    private static Figure<double> OfFuse(SupplyPoint device)
    {
        var loop = FaultDevice.IsFuse(device) && device.Limit.Value is { } rated ? Fuses.Loop(FuseType.GeneralPurpose, rated, Duration.FromSeconds(LongestSeconds)) : null;
        return Sum.Of($"{device.Name}, let through where it takes 5 s, A²s", "E = (0.95 · 230 / z)² · 5", Bs7671.FuseLoops)
            .Put("z", new Figure<ElectricResistance>(loop, device.Limit.RestsOn, Reason.Derived.It))
            .Gives(ohms => Adiabatic.LetThrough(Fuses.Operating(ohms), Duration.FromSeconds(LongestSeconds)));
    }
}
