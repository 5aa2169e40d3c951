using System.Diagnostics.CodeAnalysis;
using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Reading.Phrases;

/// <summary>What is put aside for a department.</summary>
internal static class Allowances
{
    private const string Offered = "W, kW, A, kg, t, lb";

    /// <summary>A department and an amount.</summary>
    public static readonly Phrase<Allowance> Allowance = new(
        "allowance",
        "a department and an amount",
        $@"[^\s0-9](?:[^0-9]*\S)?\s+{Patterns.Number}\s*(?:W|kW|MW|A|mA|kA|kg|g|t|lb)",
        ["lighting 18 kW", "sound 900 kg", "traders 32 A"],
        Read);

    private static bool Read(Cursor cursor, [MaybeNullWhen(false)] out Allowance allowance)
    {
        allowance = null;
        cursor.SkipSpaces();
        var start = cursor.At;
        var digit = cursor.Text.AsSpan(start).IndexOfAnyInRange('0', '9');
        if (digit < 2 || cursor.Text[start + digit - 1] != ' ')
        {
            return false;
        }

        var department = cursor.Written(start, start + digit);
        cursor.At = start + digit;
        return cursor.Number(out var number) && ReadAmount(cursor, start + digit, department, number, out allowance);
    }

    private static bool ReadAmount(Cursor cursor, int at, string department, double number, [MaybeNullWhen(false)] out Allowance allowance)
    {
        var end = cursor.At;
        cursor.SkipSpaces();
        var symbol = UnitKind.Symbol(cursor.Text.AsSpan(cursor.At));
        allowance = UnitKinds.Power.Find(symbol) is { } power ? new(department, Draw: Power.FromWatts(number * power.Factor))
            : UnitKinds.Current.Find(symbol) is { } current ? new(department, Current: ElectricCurrent.FromAmperes(number * current.Factor))
            : UnitKinds.Mass.Find(symbol) is { } mass ? new(department, Weight: Mass.FromKilograms(number * mass.Factor))
            : null;
        if (allowance is null)
        {
            return cursor.Fail(symbol.Length == 0
                ? PhraseFaults.WhichUnit(at, cursor.Written(at, end), Offered)
                : PhraseFaults.NoSuchUnit(cursor.At, symbol.ToString(), "an allowance", Offered));
        }

        cursor.At += symbol.Length;
        return true;
    }
}
