using UnitsNet;

namespace Advance.Reading.Phrases;

/// <summary>What a meter shows: a number with a unit of any quantity that is worked out.</summary>
internal static class Readings
{
    private static readonly IReadOnlyList<(UnitKind Kind, Func<double, IQuantity> Make)> Kinds =
    [
        (UnitKinds.Current, amount => ElectricCurrent.FromAmperes(amount)),
        (UnitKinds.Potential, amount => ElectricPotential.FromVolts(amount)),
        (UnitKinds.Resistance, amount => ElectricResistance.FromOhms(amount)),
        (UnitKinds.Power, amount => Power.FromWatts(amount)),
        (UnitKinds.Length, amount => Length.FromMeters(amount)),
        (UnitKinds.Mass, amount => Mass.FromKilograms(amount)),
        (UnitKinds.Duration, amount => Duration.FromSeconds(amount)),
        (UnitKinds.Ratio, amount => Ratio.FromPercent(amount)),
        (UnitKinds.Frequency, amount => Frequency.FromHertz(amount)),
        (UnitKinds.Angle, amount => Angle.FromDegrees(amount)),
        (UnitKinds.Speed, amount => Speed.FromMetersPerSecond(amount)),
    ];

    /// <summary>The quantity written there; null where the text is something else.</summary>
    public static IQuantity? Of(string text)
    {
        var cursor = new Cursor(text.Trim());
        if (!Sign.Read(cursor, "a reading", true, out var sign) || !cursor.Number(out var number))
        {
            return null;
        }

        cursor.SkipSpaces();
        var symbol = UnitKind.Symbol(cursor.Text.AsSpan(cursor.At));
        foreach (var (kind, make) in Kinds)
        {
            if (kind.Find(symbol) is { } unit && cursor.At + symbol.Length == cursor.Text.Length)
            {
                return make(unit.InBaseUnits(sign * number));
            }
        }

        return null;
    }
}
