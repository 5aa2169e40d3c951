using Advance.Domain.Figures;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Leads that come along with a unit anyway, such as the mains lead of a receiver: a run to that unit uses its own lead first.</summary>
internal sealed class OwnLeads
{
    private readonly ILookup<string, Piece> named;
    private readonly ILookup<Address, Piece> companions;
    private readonly HashSet<Address> claimed = [];

    /// <summary>Looks through the plan's pieces.</summary>
    public OwnLeads(IReadOnlyList<Piece> pieces)
    {
        named = pieces.SelectMany(piece => new[] { (Name: piece.Name, piece), (Name: piece.Address.Text, piece) }.Distinct())
            .ToLookup(pair => pair.Name, pair => pair.piece, StringComparer.Ordinal);
        companions = pieces.Where(piece => piece.Why is Need.GoesWith).ToLookup(piece => ((Need.GoesWith)piece.Why).Other);
    }

    /// <summary>The lead of the unit that a link goes to, by the unit's name or address; null where it brings none, or another link has it.</summary>
    public Kind? Claim(Link link)
    {
        var lead = named[link.To.Port.Device].SelectMany(piece => companions[piece.Address])
            .Where(piece => piece.IsPulled && piece.Kind?.Cable?.Carries == link.Carries)
            .OrderBy(piece => piece.Address)
            .FirstOrDefault(piece => !claimed.Contains(piece.Address));
        if (lead is not null)
        {
            claimed.Add(lead.Address);
        }

        return lead?.Kind;
    }
}
