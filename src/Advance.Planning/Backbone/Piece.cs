using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>One physical thing of the gig. What is no piece cannot be printed; what is one cannot be forgotten.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="Name">Its name on paper.</param>
/// <param name="Item">Id of its kind, or words for something in no stock.</param>
/// <param name="Kind">Its kind; null where no stock has it.</param>
/// <param name="Department">Which department asked for it.</param>
/// <param name="From">Whose it is; its doubt is that of everything counted from it.</param>
/// <param name="Spot">Where it stands; null for what has no place of its own, or an unknown one.</param>
/// <param name="Why">Why it is there.</param>
public sealed record Piece(
    Address Address, string Name, string Item, Kind? Kind, string Department, Given<Owner> From, Spot? Spot, Need Why)
{
    /// <summary>Whether the shop must pull it.</summary>
    public bool IsPulled => From.Is(out var owner) && owner.Kind == OwnerKind.Shop;
}
