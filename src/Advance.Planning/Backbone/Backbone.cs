namespace Advance.Planning;

/// <summary>The two lists that everything else is printed from.</summary>
/// <param name="Pieces">Every physical thing, in the order of their addresses.</param>
/// <param name="Links">Every connection, in the order of their addresses.</param>
public sealed record Backbone(IReadOnlyList<Piece> Pieces, IReadOnlyList<Link> Links)
{
    /// <summary>Puts the departments' lists together.</summary>
    public static Backbone Of(IEnumerable<IReadOnlyList<Piece>> pieces, IEnumerable<IReadOnlyList<Link>> links) =>
        new(
            [.. pieces.SelectMany(list => list).OrderBy(piece => piece.Address)],
            [.. links.SelectMany(list => list).OrderBy(link => link.Address)]);
}
