using UnitsNet;

namespace Advance.Domain.Figures;

/// <summary>Compares values of any kind that a figure may hold.</summary>
internal static class Closeness
{
    private const double RelativeTolerance = 1e-9;

    public static bool IsAtMost<T>(T value, T limit)
        where T : struct, IComparable<T> => value.CompareTo(limit) <= 0 || AreClose(InBaseUnits(value), InBaseUnits(limit));

    private static bool AreClose(double a, double b) => Math.Abs(a - b) <= RelativeTolerance * Math.Max(Math.Abs(a), Math.Abs(b));

    private static double InBaseUnits<T>(T value) => value switch
    {
        int whole => whole,
        double real => real,
        IQuantity quantity => quantity.As(quantity.QuantityInfo.BaseUnitInfo.Value),
        _ => double.NaN,
    };
}
