using System.Globalization;
using Advance.Domain.Gigs;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>What is between a truss and the roof, in words.</summary>
internal static class GearWords
{
    /// <summary><c>2 × Steel 1 m, Chain 0.9 m to 16 links, 4 × Shackle</c>; a dash for nothing.</summary>
    public static string Of(IReadOnlyList<Piece> gear, LegMade? made)
    {
        var parts = gear.GroupBy(piece => piece.Item, StringComparer.Ordinal).Select(group => Counted(group.Count(), group.First()) + Links(group.Key, made)).ToList();
        return parts.Count == 0 ? "–" : string.Join(", ", parts);
    }

    /// <summary><c>choked</c>; empty for what is not laid around anything.</summary>
    public static string Laid(SlingHitch? hitch) => hitch is { } known ? known.Words() : "";

    private static string Counted(int count, Piece piece) => count > 1 ? $"{count} × {NameOf(piece)}" : NameOf(piece);

    /// <summary>As on its shelf label.</summary>
    public static string NameOf(Piece piece) => piece.Kind?.Name ?? piece.Item;

    private static string Links(string item, LegMade? made) => made is { Links: { } links } && made.Parts[^1].Id == item ? string.Create(CultureInfo.InvariantCulture, $" to {links} links") : "";
}
