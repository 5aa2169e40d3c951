using System.Globalization;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>A load that is one of several of a name: <c>Fixture 12</c>.</summary>
internal static class NumberedLoad
{
    /// <summary>Its name and number; null for a load of no number.</summary>
    public static (string Name, int Number)? Of(CarriedLoad load) =>
        load.What.LastIndexOf(' ') is var at and > 0 && int.TryParse(load.What[(at + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? (load.What[..at], number) : null;

    /// <summary>Whether a load is of the number after or before another one's, and weighs alike.</summary>
    public static bool IsNeighbour(CarriedLoad one, CarriedLoad other) =>
        Of(one) is { } from && Of(other) is { } to && from.Name == to.Name && Math.Abs(from.Number - to.Number) == 1 && WeighAlike(one, other);

    /// <summary>Whether a load is of the number after another one's, and weighs alike.</summary>
    public static bool IsNext(CarriedLoad before, CarriedLoad next) =>
        Of(before) is { } from && Of(next) is { } to && from.Name == to.Name && to.Number == from.Number + 1 && WeighAlike(before, next);

    private static bool WeighAlike(CarriedLoad one, CarriedLoad other) =>
        one.Weight.Value?.Kilograms == other.Weight.Value?.Kilograms && one.Weight.RestsOn.Any == other.Weight.RestsOn.Any;
}
