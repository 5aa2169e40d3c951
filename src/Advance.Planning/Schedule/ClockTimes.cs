using System.Globalization;
using Advance.Domain.Facts;

namespace Advance.Planning;

/// <summary>Finds times of the day in words that people wrote: <c>supper with the guests 18:15</c>, <c>12:30/17:00</c>.</summary>
internal static class ClockTimes
{
    private static readonly char[] Between = [' ', '/', ',', ';', '(', ')', '-', '\n'];

    /// <summary>Every time in the words, in the order written; <c>+1</c> behind one is the next day.</summary>
    public static IReadOnlyList<Moment> In(string words)
    {
        var parts = words.Split(Between, StringSplitOptions.RemoveEmptyEntries);
        return [.. parts.Select((part, index) => Read(part, index + 1 < parts.Length && parts[index + 1] == "+1")).OfType<Moment>()];
    }

    private static Moment? Read(string part, bool isNextDay)
    {
        var (text, next) = part.EndsWith("+1", StringComparison.Ordinal) ? (part[..^2], true) : (part, isNextDay);
        var colon = text.IndexOf(':', StringComparison.Ordinal);
        return colon is 1 or 2 && text.Length == colon + 3
            && int.TryParse(text.AsSpan(0, colon), NumberStyles.None, CultureInfo.InvariantCulture, out var hour) && hour <= 23
            && int.TryParse(text.AsSpan(colon + 1), NumberStyles.None, CultureInfo.InvariantCulture, out var minute) && minute <= 59
            ? Moment.At(hour, minute, next)
            : null;
    }
}
