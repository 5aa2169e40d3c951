namespace Advance.Domain.Facts;

/// <summary>From one moment to another: <c>08:00-18:00</c>, <c>22:00 to 07:00 +1</c>.</summary>
/// <param name="From">The start.</param>
/// <param name="To">The end, later than the start.</param>
public readonly record struct MomentRange(Moment From, Moment To)
{
    /// <summary>Whether both share more than a moment.</summary>
    public bool Overlaps(MomentRange other) => From.Minutes < other.To.Minutes && other.From.Minutes < To.Minutes;

    /// <summary><c>22:00-07:00 +1</c>.</summary>
    public override string ToString() => $"{From}-{To}";
}
