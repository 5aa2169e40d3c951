using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>How long what is between two hooks is.</summary>
internal static class GearLengths
{
    /// <summary>Steels and shackles one after the other; roundslings of one pick side by side, one around each chord. What nobody knows counts nothing.</summary>
    public static Length Of(IEnumerable<Piece> gear)
    {
        var parts = gear.Select(piece => piece.Kind?.Lifting).OfType<LiftingGear>().Where(part => part.Length is { IsKnown: true }).ToLookup(part => part.Made == LiftingKind.Roundsling, part => part.Length!.Value.Value);
        return parts[true].DefaultIfEmpty(Length.Zero).Max() + parts[false].Aggregate(Length.Zero, (sum, length) => sum + length);
    }
}
