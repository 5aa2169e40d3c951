using System.Diagnostics.CodeAnalysis;
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

    private static readonly string Offered = string.Join(", ", Kinds.Select(kind => kind.Kind.Offered));

    /// <summary>A number with its unit.</summary>
    public static readonly Phrase<IQuantity> Reading = new(
        "reading",
        "a reading with its unit",
        $"{Patterns.Minus}?{Patterns.Spaces}{Patterns.Number}{Patterns.Spaces}(?:{string.Join('|', Kinds.Select(kind => $"(?:{kind.Kind.Pattern})"))})",
        ["4.1 A", "228 V", "0.35 ohm", "412 kg"],
        Read);

    private static bool Read(Cursor cursor, [MaybeNullWhen(false)] out IQuantity value)
    {
        value = null;
        if (!Sign.Read(cursor, "a reading", true, out var sign))
        {
            return false;
        }

        var start = cursor.At;
        if (!cursor.Number(out var number))
        {
            return false;
        }

        var end = cursor.At;
        cursor.SkipSpaces();
        var symbol = UnitKind.Symbol(cursor.Text.AsSpan(cursor.At));
        foreach (var (kind, make) in Kinds)
        {
            if (kind.Find(symbol) is { } unit)
            {
                cursor.At += symbol.Length;
                value = make(unit.InBaseUnits(sign * number));
                return true;
            }
        }

        return cursor.Fail(symbol.Length == 0
            ? PhraseFaults.WhichUnit(start, cursor.Written(start, end), Offered)
            : PhraseFaults.NoSuchUnit(cursor.At, symbol.ToString(), "a reading", Offered));
    }
}
