using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>A case while it is being packed. Each piece takes the share of it that its kind says: one of eight takes an eighth.</summary>
/// <param name="address">Its name in the plan.</param>
/// <param name="name">Its name on paper.</param>
/// <param name="kind">Its kind.</param>
/// <param name="department">Whose things are in it.</param>
internal sealed class OpenCase(Address address, string name, Kind kind, string department)
{
    // Eight eighths fill a case, whatever floating-point numbers make of them.
    private const double Slack = 1e-9;

    private readonly List<Packed> contents = [];
    private double used;

    /// <summary>Its kind.</summary>
    public Kind Kind => kind;

    /// <summary>Whose things are in it.</summary>
    public string Department => department;

    /// <summary>Whether so much of it is free.</summary>
    public bool HasRoom(double share) => used + share <= 1 + Slack;

    /// <summary>Puts pieces in; what was built in takes the whole of it.</summary>
    public void Put(Packed packed, double share)
    {
        contents.Add(packed);
        used += share;
    }

    /// <summary>The case, closed.</summary>
    /// <param name="restsOn">The open questions about what packs into cases like it: what is in this one hangs on what is in the others.</param>
    /// <param name="margins">On weights.</param>
    public TravellingUnit Close(Doubts restsOn, WeightMargins margins)
    {
        var gross = Sum.Of($"gross weight of {name}", "G = c + Σ wᵢ", Publication.Arithmetic)
            .PutAll("wᵢ", contents.Select(packed => Weights.Of(packed.Item, packed.Kind, new Figure<int>(packed.Count, restsOn, Reason.Derived.It), margins)))
            .Put("c", Weights.OfOne(kind.Id, kind, margins))
            .Gives((weights, own) => weights.Values.Aggregate(own, (sum, weight) => sum + weight));
        return new TravellingUnit(address, name, kind.Id, kind, 1, contents, gross);
    }
}
