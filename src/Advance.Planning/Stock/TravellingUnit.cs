using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Places;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What is carried, pushed and loaded as one: a case with what is in it, or loose pieces of one kind, which are counted together.</summary>
/// <param name="Address">Its name in the plan: <c>case/crate-cable/sound/1</c>.</param>
/// <param name="Name">Its name on paper.</param>
/// <param name="Item">Id of the case's kind, or of the loose pieces' kind.</param>
/// <param name="Kind">That kind; null where no stock has it.</param>
/// <param name="Count">How many alike: 1 for a case.</param>
/// <param name="Contents">What is in it, in the order of the shelves; empty for loose pieces and for an empty case.</param>
/// <param name="Gross">What one of them weighs with what is in it; unknown where one weight is.</param>
public sealed record TravellingUnit(
    Address Address, string Name, string Item, Kind? Kind, int Count, IReadOnlyList<Packed> Contents, Figure<Mass> Gross)
{
    /// <summary>What it measures as it travels; null where the stock does not say.</summary>
    public Given<Size>? Size => Kind?.Travels ?? Kind?.Size;

    /// <summary>Whether it is a case, full or empty.</summary>
    public bool IsCase => Contents.Count > 0 || Kind?.Role == Role.Case;

    /// <summary>Whose things it carries: that of what is in it, of an empty case or a loose piece its own; empty for what is in no stock.</summary>
    public string Department => (Contents.Count > 0 ? Contents[0].Kind : Kind)?.Department ?? "";
}
