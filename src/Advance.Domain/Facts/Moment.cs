namespace Advance.Domain.Facts;

/// <summary>A time on a gig's day, without a zone; <c>00:30 +1</c> belongs to the day before the night was over.</summary>
/// <param name="Minutes">Minutes from the day's first midnight, 0 to 2,879.</param>
public readonly record struct Moment(int Minutes) : IComparable<Moment>
{
    /// <summary>A moment from hour (0 to 23), minute (0 to 59) and whether it is past midnight.</summary>
    public static Moment At(int hour, int minute, bool nextDay = false) => new((((nextDay ? 24 : 0) + hour) * 60) + minute);

    /// <summary>Whether it lies after the midnight that ends the day.</summary>
    public bool IsNextDay => Minutes >= 24 * 60;

    /// <summary>Earlier moments come first.</summary>
    public int CompareTo(Moment other) => Minutes.CompareTo(other.Minutes);

    /// <summary>A moment so many minutes later.</summary>
    public Moment Plus(int minutes) => new(Minutes + minutes);

    /// <summary><c>19:30</c>, or <c>00:30 +1</c> after midnight.</summary>
    public override string ToString() => $"{Minutes / 60 % 24:00}:{Minutes % 60:00}{(IsNextDay ? " +1" : "")}";
}
