using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What one department of the shop sends along.</summary>
/// <param name="Name">As in the stock; empty for what is in no stock.</param>
/// <param name="Lines">Kinds on the pull list, without cases and vehicles.</param>
/// <param name="Pieces">How many are pulled.</param>
/// <param name="Cases">How many cases they travel in.</param>
/// <param name="Weight">Of the pieces, without cases.</param>
/// <param name="Gross">Of its cases as packed and of what is loose.</param>
public sealed record DepartmentLoad(
    string Name, IReadOnlyList<StockLine> Lines, Figure<int> Pieces, Figure<int> Cases, Figure<Mass> Weight, Figure<Mass> Gross)
{
    /// <summary>Its numbers, each under its address.</summary>
    public IReadOnlyList<Stated> Figures =>
    [
        Stated.Of(Where / "pieces", $"pieces pulled, {Name}", Pieces),
        Stated.Of(Where / "cases", $"cases, {Name}", Cases),
        Stated.Of(Where / "weight", $"weight pulled without cases, {Name}", Weight),
        Stated.Of(Where / "gross", $"weight with cases, {Name}", Gross),
    ];

    private Address Where => Address.Of("load") / "department" / Name;
}
