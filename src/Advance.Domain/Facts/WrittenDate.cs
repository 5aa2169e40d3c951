namespace Advance.Domain.Facts;

/// <summary>A date as somebody wrote it: the weekday and the year may be missing, and the weekday may be wrong.</summary>
/// <param name="Weekday">The weekday that was written, unchecked.</param>
/// <param name="Day">Day of the month, 1 to 31, valid in <paramref name="Month"/>.</param>
/// <param name="Month">1 to 12.</param>
/// <param name="Year">Four digits, or null where the writer left it to the gig.</param>
public readonly record struct WrittenDate(DayOfWeek? Weekday, int Day, int Month, int? Year)
{
    /// <summary>The date meant, taking a missing year from whichever puts it nearest to <paramref name="near"/>; an earlier date wins a tie.</summary>
    public DateOnly Resolve(DateOnly near)
    {
        if (Year is { } year)
        {
            return In(year);
        }

        var best = In(near.Year - 1);
        foreach (var candidate in (ReadOnlySpan<DateOnly>)[In(near.Year), In(near.Year + 1)])
        {
            if (Math.Abs(candidate.DayNumber - near.DayNumber) < Math.Abs(best.DayNumber - near.DayNumber))
            {
                best = candidate;
            }
        }

        return best;
    }

    // 29 February in a year that has none means the last day of February.
    private DateOnly In(int year) => new(year, Month, Math.Min(Day, DateTime.DaysInMonth(year, Month)));
}
