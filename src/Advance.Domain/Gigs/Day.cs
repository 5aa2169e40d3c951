using Advance.Domain.Facts;

namespace Advance.Domain.Gigs;

/// <summary>One day of the gig.</summary>
/// <param name="Name">Its key; <c>show</c> where the gig has one day only.</param>
/// <param name="Date">As written; the weekday may be wrong.</param>
/// <param name="Kind">What the day is for.</param>
public sealed record Day(string Name, Given<WrittenDate> Date, DayKind Kind);
