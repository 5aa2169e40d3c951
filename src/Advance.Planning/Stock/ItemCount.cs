using Advance.Domain.Figures;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>How many of one kind are wanted and ready, before anything stands in for anything.</summary>
internal sealed record ItemCount(
    string Item, Kind? Kind, Figure<int> Need, Figure<int> Spare, Figure<int> Ready, Figure<int> Hired, IReadOnlyList<Piece> Pieces)
{
    /// <summary>Wanted and not there; negative is left over; null where unknown.</summary>
    public int? Missing => Need.Value + Spare.Value - Ready.Value - Hired.Value;
}
