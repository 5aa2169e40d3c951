namespace Advance.Planning;

/// <summary>A leg of a bridle, placed.</summary>
/// <param name="Point">The venue's point that it goes to.</param>
/// <param name="Wanted">How long it would have to be, m; null where nobody knows.</param>
/// <param name="Gear">What it is made of.</param>
public sealed record PlacedLeg(string Point, double? Wanted, IReadOnlyList<Piece> Gear)
{
    /// <summary>As chosen from the stock; null where it was written, or nothing fits.</summary>
    public LegMade? Made { get; init; }
}
