using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>
/// What the device of an outlet or a service bears besides the current in use, in the whole numbers of the choice of circuits, rounded down:
/// leakage to 30 % of what a residual-current device trips at (BS 7671 531.3.2), inrush to the lowest instantaneous threshold of its type, 3, 5
/// or 10 times the rating for B, C, D (IEC 60898-1 table 7, from memory).
/// </summary>
internal static class CircuitDevice
{
    private const double Leaked = 0.3;
    private const double Current = 0.01;
    private const double Leakage = 0.000_01;

    // What is a whole number but for the last bits of a sum.
    private const double Hair = 1e-6;

    /// <summary>Leakage in 10 microamperes; null where there is no residual-current device, or nobody knows.</summary>
    public static int? LeakageOf(PowerNode node) =>
        (node.Service?.ResidualProtection ?? node.Row?.Residual) is { IsKnown: true } residual && residual.Value.Amperes > 0 ? Down(residual.Value.Amperes * Leaked / Leakage) : null;

    /// <summary>Inrush as a peak in 10 mA; null where nobody knows the type of the breaker.</summary>
    public static int? InrushOf(PowerNode node) =>
        node.Row is { Rating.IsKnown: true } row && Breakers.TypeOf(row.Device) is { } type ? Down(row.Rating.Value.Amperes * Breakers.HoldsBelow(type) * Math.Sqrt(2) / Current) : null;

    /// <summary>Leakage of loads, rounded up; what is unknown is asked for by a rule.</summary>
    public static int LeakageOf(PowerChain chain) => chain.Loads.Sum(load => load.Leakage.Value is { } one ? Up(one.Amperes / Leakage) : 0);

    /// <summary>Inrush of loads, rounded up; what is unknown is asked for by a rule.</summary>
    public static int InrushOf(PowerChain chain) => chain.Loads.Sum(load => Up(load.Inrush));

    /// <summary>A current in 10 mA, rounded up: so many rounded together are never less than what they stand for.</summary>
    public static int Up(Figure<ElectricCurrent> figure, double times = 1) => figure.Value is { } value ? Up(times * value.Amperes / Current) : 0;

    /// <summary>A limit in 10 mA, rounded down; null where nobody knows.</summary>
    public static int? Down(Figure<ElectricCurrent> figure) => figure.Value is { } value ? Down(value.Amperes / Current) : null;

    private static int Up(double value) => (int)Math.Ceiling(value - Hair);

    private static int Down(double value) => (int)Math.Floor(value + Hair);
}
