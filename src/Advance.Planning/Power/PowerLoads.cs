using Advance.Domain;
using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Finds everything that draws current.</summary>
internal sealed class PowerLoads
{
    private readonly Policies policies;
    private readonly Stock stock;
    private readonly LoadPlaces places;
    private readonly Dictionary<Address, Piece> pieces;
    private readonly Dictionary<Address, Thing> things;

    private PowerLoads(Brief brief, IReadOnlyList<Piece> pieces, Ground ground)
    {
        policies = brief.Company.Policies;
        stock = brief.Stock;
        places = LoadPlaces.Of(brief, ground);
        this.pieces = pieces.DistinctBy(piece => piece.Address).ToDictionary(piece => piece.Address);
        things = ThingsOf(brief.Gig).DistinctBy(one => one.Address).ToDictionary(one => one.Address, one => one.Thing);
    }

    /// <summary>All loads in the order of their addresses; no two have one name.</summary>
    public static IReadOnlyList<PowerLoad> Of(Brief brief, IReadOnlyList<Piece> pieces, Ground ground)
    {
        var found = new PowerLoads(brief, pieces, ground);
        var loads = found.pieces.Values.Select(found.LoadOf).OfType<PowerLoad>()
            .Concat(brief.Gig.Acts.Select(act => UnknownBackline.Of(act, brief, ground)).OfType<PowerLoad>());
        return [.. loads.OrderBy(load => load.Address).GroupBy(load => load.Name, StringComparer.Ordinal).SelectMany(Numbered).OrderBy(load => load.Address)];
    }

    private static IEnumerable<PowerLoad> Numbered(IEnumerable<PowerLoad> loads) =>
        loads.Select((load, index) => index == 0 ? load : load with { Name = $"{load.Name} {index + 1}" });

    private static IEnumerable<(Address Address, Thing Thing)> ThingsOf(Gig gig)
    {
        var root = Address.Of("stage");
        return gig.Stages.SelectMany(stage => stage.Things).Concat(gig.Around).Select(thing => (root / thing.Name, thing))
            .Concat(gig.Acts.SelectMany(act => act.Backline.Select(thing => (root / act.Name / thing.Name, thing))));
    }

    // What the house owns hangs on the house's own outlets; a distribution draws nothing itself; a hired spare stays in its case.
    private PowerLoad? LoadOf(Piece piece)
    {
        if (piece.Kind is { Role: Role.Distribution or Role.Cable } || (piece.From.Is(out var owner) && (owner.Kind == OwnerKind.Venue || (owner.Kind == OwnerKind.Hire && ExtrasDepartment.IsLoose(piece)))))
        {
            return null;
        }

        var mains = piece.Kind?.Mains;
        var draws = things.GetValueOrDefault(piece.Address)?.Draws is { IsKnown: true } said ? said : (Given<ElectricCurrent>?)null;
        var (inUse, atMost) = (draws ?? mains?.InUse, draws ?? mains?.AtMost);
        return (mains is null && draws is null) || (IsNone(inUse) && IsNone(atMost)) ? null : Load(piece, mains, inUse, atMost);
    }

    private static bool IsNone(Given<ElectricCurrent>? draw) => draw is { IsKnown: true } known && known.Value.Amperes == 0;

    private PowerLoad Load(Piece piece, Mains? mains, Given<ElectricCurrent>? inUse, Given<ElectricCurrent>? atMost)
    {
        var place = places.Find(piece.Address);
        return new PowerLoad(
            piece.Address,
            NameOf(piece, place),
            piece,
            place.Use,
            Draw(inUse, piece, "in-use"),
            Draw(atMost, piece, "at-most"),
            mains?.Leakage is { } leakage ? Figure.From(leakage) : Figure.Policy("unknown-leakage", policies.UnknownLeakage),
            mains?.Inrush is { } inrush ? Figure.From(inrush) : Figure.Policy("unknown-inrush", policies.UnknownInrush),
            mains?.Displacement is { IsKnown: true } lag ? Figure.From(lag) : null,
            mains?.ThirdHarmonic is { IsKnown: true } third ? Figure.From(third) : null,
            mains?.Supply,
            mains?.Inlet ?? policies.BacklinePlug,
            mains?.Link ?? "",
            Draw(mains?.LinkCarries, piece, "link-carries"),
            place.Spot ?? piece.Spot,
            place.Height,
            place.Act,
            IsAssumed: false,
            AskedAt(piece))
        {
            RestsOn = place.RestsOn,
            HigherHarmonics = Higher(mains),
            PowerFactor = mains?.PowerFactor is { IsKnown: true } factor ? Figure.From(factor) : null,
            Continuous = mains?.Continuous,
            IsSteady = mains?.SteadyPower is { IsKnown: true, Value: true },
            Leads = (piece.Kind?.With ?? []).DistinctBy(with => with.Item).Select(with => (with.Item, stock.Find(with.Item)?.Cable))
                .Where(with => with.Cable is not null).ToDictionary(with => with.Item, with => with.Cable!, StringComparer.Ordinal),
        };
    }

    private static List<Harmonic> Higher(Mains? mains) =>
    [
        .. new[] { (Order: 5, Share: mains?.FifthHarmonic), (Order: 7, Share: mains?.SeventhHarmonic), (Order: 9, Share: mains?.NinthHarmonic) }
            .Where(one => one.Share is { IsKnown: true })
            .Select(one => new Harmonic(one.Order, Figure.From(one.Share!.Value))),
    ];

    // What a stock leaves out is a question to the stock.
    private static Figure<ElectricCurrent> Draw(Given<ElectricCurrent>? given, Piece piece, string key)
    {
        var at = piece.Kind?.At ?? Mark.Nowhere;
        return given is { } written
            ? Figure.From(written)
            : new Figure<ElectricCurrent>(null, Doubts.Of(new Doubt($"{piece.Item} / mains / {key}", at, LeftOut: true)), Reason.Derived.It);
    }

    private string NameOf(Piece piece, LoadPlace place) => piece.Why is Need.GoesWith with && pieces.TryGetValue(with.Other, out var other)
        ? $"{NameOf(other, place)} {piece.Item}"
        : place.Name ?? piece.Name;

    private Mark AskedAt(Piece piece) => piece.Why switch
    {
        Need.AskedFor asked => asked.At,
        Need.GoesWith with when pieces.TryGetValue(with.Other, out var other) => AskedAt(other),
        Need.GoesWith with => with.At,
        _ => Mark.Nowhere,
    };
}
