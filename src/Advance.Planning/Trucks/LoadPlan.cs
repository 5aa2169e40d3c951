using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What it all weighs.</summary>
/// <param name="Weight">Of everything pulled, with margins; unknown where one weight is.</param>
/// <param name="Pieces">How many are pulled; unknown where one count is.</param>
/// <param name="Unweighed">Ids of kinds on the pull list whose weight nobody knows.</param>
public sealed record LoadPlan(Figure<Mass> Weight, Figure<int> Pieces, IReadOnlyList<string> Unweighed)
{
    /// <summary>Both, each under its address.</summary>
    public IReadOnlyList<Stated> Figures =>
    [
        Stated.Of(Address.Of("load") / "weight", "weight of all that is pulled", Weight),
        Stated.Of(Address.Of("load") / "pieces", "pieces pulled", Pieces),
    ];
}
