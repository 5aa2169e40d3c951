namespace Advance.Domain.Facts;

/// <summary>From one moment to another: <c>08:00-18:00</c>, <c>22:00 to 07:00 +1</c>.</summary>
/// <param name="From">The start.</param>
/// <param name="To">The end, later than the start.</param>
public readonly record struct MomentRange(Moment From, Moment To);
