using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace Advance.Reading.Phrases;

/// <summary>What is put aside before the things themselves are chosen.</summary>
internal static class Amounts
{
    private const string Offered = "W, kW, kg, t, lb";
    private const string Fed = "fed by";
    private const string FedPattern = @"fed\s+by";
    private const string Power = $@"{Patterns.Number}\s*(?:W|kW|MW)(?:\s+{FedPattern}\s+\S(?:.*\S)?)?";
    private const string Pattern = $@"(?:{Power}|{Patterns.Number}\s*(?:kg|g|t|lb))";

    /// <summary>A power or a weight.</summary>
    public static readonly Phrase<Amount> Amount = new("amount", "a power or a weight", Pattern, ["18 kW", "900 kg", "18 kW fed by service A"], Read);

    /// <summary>What it is for, and the amount.</summary>
    public static readonly Phrase<(string For, Amount Amount)> Allowance = new(
        "allowance", "what it is for and an amount", $@"[^\s0-9](?:[^0-9]*[^\s0-9])?\s+{Pattern}", ["lighting 18 kW", "sound 900 kg", "lighting 18 kW fed by PD1"], ReadAllowance);

    private static bool ReadAllowance(Cursor cursor, out (string For, Amount Amount) value)
    {
        value = default;
        cursor.SkipSpaces();
        var start = cursor.At;
        var digit = start + cursor.Text.AsSpan(start).IndexOfAnyInRange('0', '9');
        var number = digit > start && cursor.Text[digit - 1] == '.' ? digit - 1 : digit;
        if (number < start + 2 || cursor.Text[number - 1] != ' ')
        {
            return false;
        }

        cursor.At = number;
        if (!Read(cursor, out var amount))
        {
            return false;
        }

        value = (cursor.Written(start, number), amount);
        return true;
    }

    private static bool Read(Cursor cursor, [MaybeNullWhen(false)] out Amount amount)
    {
        amount = null;
        cursor.SkipSpaces();
        var start = cursor.At;
        if (!cursor.Number(out var number))
        {
            return false;
        }

        var end = cursor.At;
        cursor.SkipSpaces();
        var symbol = UnitKind.Symbol(cursor.Text.AsSpan(cursor.At));
        amount = UnitKinds.Power.Find(symbol) is { } power ? new(UnitsNet.Power.FromWatts(power.InBaseUnits(number)), null)
            : UnitKinds.Mass.Find(symbol) is { } mass ? new(null, Mass.FromKilograms(mass.InBaseUnits(number)))
            : null;
        if (amount is null)
        {
            return cursor.Fail(symbol.Length == 0
                ? PhraseFaults.WhichUnit(start, cursor.Written(start, end), Offered)
                : PhraseFaults.NoSuchUnit(cursor.At, symbol.ToString(), "an allowance", Offered));
        }

        cursor.At += symbol.Length;
        if (amount.Draw is not null && cursor.TakeWord("fed") && cursor.TakeWord("by"))
        {
            amount = amount with { FedBy = cursor.Written(cursor.At, cursor.Text.Length) };
            cursor.At = cursor.Text.Length;
            return amount.FedBy.Length > 0 || cursor.Fail(PhraseFaults.LeftOver(cursor.At, Fed, "a power or a weight", "18 kW fed by service A"));
        }

        return true;
    }
}
