namespace Advance.Planning;

/// <summary>What hangs, placed.</summary>
/// <param name="Pieces">What it takes.</param>
/// <param name="Things">What is drawn.</param>
/// <param name="Trusses">In the order written.</param>
public sealed record RiggingPlacement(IReadOnlyList<Piece> Pieces, IReadOnlyList<Placed> Things, IReadOnlyList<PlacedTruss> Trusses)
{
    /// <summary>Hangs of loudspeakers, each on its side.</summary>
    public IReadOnlyList<PlacedHang> Hangs { get; init; } = [];

    /// <summary>Bridles, in the order written.</summary>
    public IReadOnlyList<PlacedBridle> Bridles { get; init; } = [];
}
