namespace Advance.Planning;

/// <summary>What the shop pulls, and what comes from others.</summary>
/// <param name="Lines">By department, shelf and item.</param>
/// <param name="FromOthers">Pieces that the shop does not pull, as planned.</param>
public sealed record StockPlan(IReadOnlyList<StockLine> Lines, IReadOnlyList<Piece> FromOthers)
{
    /// <summary>What is pulled, spare, ready and short of each kind.</summary>
    public IReadOnlyList<Stated> Figures { get; } = [.. Lines.SelectMany(line => line.Figures)];
}
