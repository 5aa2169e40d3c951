using System.Globalization;
using Advance.Paper.Tree;

namespace Advance.Sheets.Markup.Subset;

/// <summary>Reads what machines are told: numbers with a point, dates and times as ISO 8601 writes them, without a zone.</summary>
internal static class MachineValues
{
    private static readonly string[] Times = ["HH:mm", "HH:mm:ss", "HH:mm:ss.FFFFFFF"];

    private static readonly string[] Moments = [.. Times.Select(time => "yyyy-MM-dd'T'" + time)];

    /// <summary>A number, or whatever <see cref="Time"/> reads, or null.</summary>
    public static MachineValue? Of(string text) => Values.Number(text) is { } number ? new NumberValue(number) : Time(text);

    /// <summary>A date, a time of day, both with a <c>T</c> between them, or null.</summary>
    public static MachineValue? Time(string text)
    {
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
        {
            return new DateValue(day);
        }

        if (TimeOnly.TryParseExact(text, Times, CultureInfo.InvariantCulture, DateTimeStyles.None, out var time))
        {
            return new TimeValue(time);
        }

        return DateTime.TryParseExact(text, Moments, CultureInfo.InvariantCulture, DateTimeStyles.None, out var moment)
            ? new MomentValue(moment)
            : null;
    }
}
