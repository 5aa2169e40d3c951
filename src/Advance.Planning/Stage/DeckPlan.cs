using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>What a stage is built from, against how large it is to be.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="Stage">As written.</param>
/// <param name="Decks">How many of what.</param>
/// <param name="Kind">The deck; null where no stock has it.</param>
/// <param name="Wanted">How many cover the stage's area; unknown where one of the sizes is.</param>
/// <param name="CanFill">Whether decks of that size can fill that stage without gap or overhang; null where unknown.</param>
public sealed record DeckPlan(Address Address, Stage Stage, CountedItem Decks, Kind? Kind, Figure<double> Wanted, bool? CanFill);
