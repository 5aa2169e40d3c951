using System.Buffers;
using Advance.Domain.Wording;

namespace Advance.Reading.Phrases;

/// <summary>What can be wrong inside a text, in words.</summary>
internal static class PhraseFaults
{
    private static readonly SearchValues<char> InNumbers = SearchValues.Create("0123456789.,");

    public static PhraseFault NotThis(string text, string expected, string example) =>
        new(0, text.Length, "not-this", $"{text} is not {expected}", $"Write it as in {example}.");

    public static PhraseFault LeftOver(int at, string rest, string expected, string example) =>
        new(at, rest.Length, "left-over", $"{rest} is too much for {expected}", $"Write it as in {example}.");

    public static PhraseFault WhichUnit(int at, string number, string units) =>
        new(at, number.Length, "which-unit", $"{number} has no unit: which one is meant?", $"Write the unit after the number: {units}.");

    public static PhraseFault NoSuchUnit(int at, string unit, string quantity, string units) =>
        new(at, unit.Length, "no-such-unit", $"{unit} is not a unit of {quantity}", $"Write one of {units}.");

    public static PhraseFault UnitSpelling(int at, string unit, string right) =>
        new(at, unit.Length, "no-such-unit", $"{unit} is not how this unit is written: did you mean {right}?", $"Write {right}.");

    public static PhraseFault WrongKind(int at, string unit, string itsKind, string quantity, string units) =>
        new(at, unit.Length, "no-such-unit", $"{unit} is a unit of {itsKind}, and {quantity} is asked for", $"Write one of {units}.");

    public static PhraseFault Ton(int at, string unit) =>
        new(at, unit.Length, "ton", $"{unit} is 907, 1000 or 1016 kg, depending on who says it", "Write kg, lb, or t for 1000 kg.");

    public static PhraseFault DecimalComma(int at, ReadOnlySpan<char> from)
    {
        var number = from[..EndOfNumber(from)].ToString();
        var point = number.Replace(',', '.');
        return new(at, number.Length, "decimal-comma", $"{number} has a comma, which may mean decimals or thousands", $"Write {point} with a point, or the number without any sign for thousands.");
    }

    public static PhraseFault TooLong(int at, int length) =>
        new(at, length, "too-long", "This number has more digits than anything on a gig", "Check the number.");

    public static PhraseFault Negative(int at, int length, string quantity) =>
        new(at, length, "negative", $"{quantity} cannot be less than nothing", "Take the minus out.");

    public static PhraseFault OutOfRange(int at, string number, string range) =>
        new(at, number.Length, "out-of-range", $"{number} is outside {range}", $"Write a number of {range}.");

    public static PhraseFault NotAWord(int at, string word, string choices, string? nearest)
    {
        Words says = nearest is null ? $"{word} is not one of the words that can stand here" : $"{word} is not one of the words that can stand here: did you mean {nearest}?";
        return new(at, word.Length, "no-such-word", says, $"Write one of {choices}.");
    }

    public static PhraseFault AllFigures(int at, string date) =>
        new(at, date.Length, "all-figures-date", $"{date} can be read as different days", "Write the month as a word: Sat 12 Sep 2026.");

    public static PhraseFault NoSuchDay(int at, string day, string month) =>
        new(at, day.Length, "no-such-day", $"{month} has no day {day}", "Check the date.");

    public static PhraseFault DayFirst(int at, string date, string right) =>
        new(at, date.Length, "day-first", $"{date} has its month before the day", $"Write {right}.");

    public static PhraseFault Clock(int at, string time, string right) =>
        new(at, time.Length, "clock", $"{time} is not a time as written here", $"Write {right}.");

    public static PhraseFault Backwards(int at, string range) =>
        new(at, range.Length, "backwards", $"{range} ends before it starts", "Write the earlier or smaller one first; a time after midnight ends in +1.");

    public static PhraseFault Twice(int at, string word) =>
        new(at, word.Length, "twice", $"{word} is said twice", "Say it once.");

    public static PhraseFault Capitals(int at, string word) =>
        new(at, word.Length, "capitals", $"{word} is written in capitals when a direction or an area is meant", $"Write {word.ToUpperInvariant()}; a thing of that name is at {word}.");

    public static PhraseFault ByWhen(int at, string rest) =>
        new(at, rest.Length, "by-when", $"{rest} is not a date by which it will be known", "Write it as in TBC venue by Fri 4 Sep.");

    private static int EndOfNumber(ReadOnlySpan<char> from) => from.IndexOfAnyExcept(InNumbers) is var end and >= 0 ? end : from.Length;
}
