using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>One line of the pull list: all that the shop brings of one kind.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="Item">Id of the kind.</param>
/// <param name="Kind">Null where no stock has it.</param>
/// <param name="Need">Pieces in use.</param>
/// <param name="Spare">Pieces more, by policy.</param>
/// <param name="StandingIn">Pieces that stand in for another kind.</param>
/// <param name="Total">What is taken off the shelf, if there are enough: in use, spares and what stands in for others, less what others stand in for.</param>
/// <param name="Ready">Owned and not out for repair.</param>
/// <param name="Covered">What others stand in for, best first.</param>
/// <param name="Hired">How many loose ones come on hire, to cover what is short.</param>
/// <param name="Short">How many are still missing, with those on hire.</param>
/// <param name="ShortInUse">How many of those are short even without a single spare.</param>
/// <param name="Pieces">What it is needed for.</param>
public sealed record StockLine(
    Address Address,
    string Item,
    Kind? Kind,
    Figure<int> Need,
    Figure<int> Spare,
    int StandingIn,
    Figure<int> Total,
    Figure<int> Ready,
    IReadOnlyList<CountedItem> Covered,
    Figure<int> Hired,
    Figure<int> Short,
    Figure<int> ShortInUse,
    IReadOnlyList<Piece> Pieces)
{
    /// <summary>Where somebody asked for the first of them; where none did, where the stock has the kind, or says that it goes with another.</summary>
    public Mark At => Asked.FirstOrDefault(Kind?.At ?? BroughtBy);

    /// <summary>Its numbers, each under its address.</summary>
    public IReadOnlyList<Stated> Figures =>
    [
        Stated.Of(Address / "spare", $"{Item}, spares", Spare),
        Stated.Of(Address / "total", $"{Item}, total to pull", Total),
        Stated.Of(Address / "ready", $"{Item}, ready", Ready),
        Stated.Of(Address / "short", $"{Item}, short", Short),
    ];

    private IEnumerable<Mark> Asked => Pieces.Select(piece => piece.Why).OfType<Need.AskedFor>().Select(need => need.At).Order();

    private Mark BroughtBy => Pieces.Select(piece => piece.Why).OfType<Need.GoesWith>().Select(need => need.At).Order().FirstOrDefault(Mark.Nowhere);
}
