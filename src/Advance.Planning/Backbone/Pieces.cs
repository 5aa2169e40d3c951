using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Makes the pieces of one department, each with what its kind always brings along.</summary>
/// <param name="department">Its name, which is the root of the pieces' addresses.</param>
/// <param name="stock">Where kinds are looked up.</param>
public sealed class Pieces(string department, Stock stock)
{
    // A kind that goes with itself, by way of others, ends here.
    private const int MostCompanionsDeep = 8;

    private readonly List<Piece> made = [];
    private readonly HashSet<Address> taken = [];

    /// <summary>What was made, in the order asked for.</summary>
    public IReadOnlyList<Piece> Made => made;

    /// <summary>The address of a part of this department.</summary>
    public Address At(string name) => Address.Of(department) / name;

    /// <summary>Adds a piece that somebody asked for, and its companions.</summary>
    /// <param name="address">Its name in the plan; a second piece of the same address gets a number.</param>
    /// <param name="name">Its name on paper.</param>
    /// <param name="item">Id of its kind.</param>
    /// <param name="from">Whose it is; null means the shop's.</param>
    /// <param name="spot">Where it stands.</param>
    /// <param name="at">Where it was asked for.</param>
    /// <param name="why">Why it is there; null means that it was asked for.</param>
    public Piece Ask(Address address, string name, string item, Given<Owner>? from, Spot? spot, Mark at, Need? why = null)
    {
        var owner = from ?? Given.Of(new Owner(OwnerKind.Shop), at);
        var piece = new Piece(Free(address), name, item, stock.Find(item), department, owner, spot, why ?? new Need.AskedFor(at));
        Add(piece, MostCompanionsDeep);
        return piece;
    }

    /// <summary>Adds so many pieces that join or go with another.</summary>
    public void Bring(Piece other, CountedItem what, Mark at) => Bring(other, what, at, MostCompanionsDeep);

    private void Bring(Piece other, CountedItem what, Mark at, int deep)
    {
        for (var number = 0; number < what.Count; number++)
        {
            var address = Free(other.Address / what.Item);
            var need = new Need.GoesWith(other.Address, at);
            Add(new Piece(address, what.Item, what.Item, stock.Find(what.Item), department, other.From, other.Spot, need), deep - 1);
        }
    }

    private void Add(Piece piece, int deep)
    {
        made.Add(piece);
        if (piece.Kind is { } kind && deep > 0)
        {
            foreach (var companion in kind.With)
            {
                Bring(piece, companion, kind.At, deep);
            }
        }
    }

    private Address Free(Address wanted)
    {
        var address = wanted;
        for (var number = 2; !taken.Add(address); number++)
        {
            address = wanted / number;
        }

        return address;
    }
}
