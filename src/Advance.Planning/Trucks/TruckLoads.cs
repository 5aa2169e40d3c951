using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Measures a load by weight, floor and volume.</summary>
internal static class TruckLoads
{
    /// <summary>The load of a gig's vehicles; null where it names none.</summary>
    public static TruckLoad? Of(Gig gig, Stock stock, IReadOnlyList<TravellingUnit> units, IReadOnlyList<WeightAllowance> allowances, LoadLimits limits)
    {
        if (gig.Trucks.Count == 0)
        {
            return null;
        }

        var spaces = gig.Trucks.Select(truck => LoadSpace.Of(truck.Item, stock)).ToList();
        var floor = FloorOf(units, spaces);
        return new TruckLoad(
            string.Join(" + ", gig.Trucks.Select(truck => truck.Name)),
            gig.Trucks[0].At,
            PayloadOf(spaces),
            units.Aggregate(Mass.Zero, (sum, unit) => sum + ((unit.Gross.Value ?? Mass.Zero) * unit.Count))
                + allowances.Aggregate(Mass.Zero, (sum, allowance) => sum + (allowance.Left.Value ?? Mass.Zero)),
            floor,
            LengthOf(spaces),
            VolumeOf(units),
            SpaceOf(spaces),
            [.. units.Where(unit => GoesNowhere(unit, spaces)).Select(unit => unit.Name).Distinct(StringComparer.Ordinal)],
            Items(units.Where(unit => unit.Kind?.Stacks is not { IsKnown: true })),
            Items(units.Where(unit => Bulk.Of(unit.Size) is null)))
        {
            Straps = StrapsOf(floor, limits),
        };
    }

    private static Figure<int> StrapsOf(Figure<Length> floor, LoadLimits limits) =>
        Sum.Of("straps", "n = ⌈L / e⌉", Publication.CommonPractice)
            .Put("L", floor)
            .Put("e", Figure.Policy("truck / strap-each", limits.StrapEach))
            .Gives((length, each) => (int)Math.Ceiling((length.Meters / each.Meters) - 1e-9));

    // Of several vehicles the lowest counts, and their width on the average: it is the floor of all of them that is filled.
    private static Figure<Length> FloorOf(IReadOnlyList<TravellingUnit> units, List<LoadSpace> spaces)
    {
        var piles = Piles.Of(units, spaces.TrueForAll(space => space.Inside is not null) ? spaces.Min(space => space.Inside!.Value.Height) : null);
        var doubts = units.Aggregate(Doubts.None, (sum, unit) => sum.With(unit.Gross.RestsOn).With(Doubts.Of(unit.Size?.Doubt)).With(Doubts.Of(unit.Kind?.Stacks?.Doubt)));
        var known = units.All(unit => Bulk.Of(unit.Size) is not null);
        return Sum.Of("length of floor taken", "L = Σ fᵢ / W", Publication.CommonPractice)
            .PutAll("fᵢ", known ? piles.Select(pile => new Figure<double>(pile.Floor, doubts, Reason.Derived.It)) : [new Figure<double>(null, doubts, Reason.Derived.It)])
            .Put("W", spaces.Count == 1 ? spaces[0].Width : WidthOf(spaces))
            .Gives((floors, width) => Length.FromMeters(floors.Values.Sum() / width.Meters));
    }

    private static Figure<double> SpaceOf(List<LoadSpace> spaces) => spaces.Count == 1
        ? spaces[0].Volume
        : Sum.Of("load space", "S = Σ sᵢ", Publication.Arithmetic).PutAll("sᵢ", spaces.Select(space => space.Volume)).Gives(terms => terms.Values.Sum());

    private static Figure<Mass> PayloadOf(List<LoadSpace> spaces) => spaces.Count == 1
        ? spaces[0].Payload
        : Sum.Of("payload", "P = Σ pᵢ", Publication.Arithmetic).PutAll("pᵢ", spaces.Select(space => space.Payload)).Gives(Total);

    private static Figure<Length> WidthOf(List<LoadSpace> spaces) =>
        Sum.Of("width of floor, on the average", "W = A / D", Publication.Arithmetic)
            .Put("A", Sum.Of("floor", "A = Σ aᵢ", Publication.Arithmetic).PutAll("aᵢ", spaces.Select(space => space.Floor)).Gives(terms => terms.Values.Sum()))
            .Put("D", LengthOf(spaces))
            .Gives((floor, length) => Length.FromMeters(floor / length.Meters));

    private static Figure<Length> LengthOf(List<LoadSpace> spaces) => spaces.Count == 1
        ? spaces[0].Depth
        : Sum.Of("length of floor", "D = Σ dᵢ", Publication.Arithmetic).PutAll("dᵢ", spaces.Select(space => space.Depth)).Gives(Total);

    private static Figure<double> VolumeOf(IReadOnlyList<TravellingUnit> units) =>
        Sum.Of("volume of the load", "V = Σ vᵢ", Publication.Arithmetic)
            .PutAll("vᵢ", units.Select(unit => Measure(unit, bulk => bulk.Volume * unit.Count)))
            .Gives(terms => terms.Values.Sum());

    private static Figure<double> Measure(TravellingUnit unit, Func<Bulk, double> measure) => new(
        Bulk.Of(unit.Size) is { } bulk ? measure(bulk) : null, unit.Gross.RestsOn.With(Doubts.Of(unit.Size?.Doubt)), Reason.Derived.It);

    private static bool GoesNowhere(TravellingUnit unit, List<LoadSpace> spaces) =>
        Bulk.Of(unit.Size) is { } bulk && spaces.TrueForAll(space => space.Inside is { } inside && !bulk.GoesInto(inside));

    private static List<string> Items(IEnumerable<TravellingUnit> units) => [.. units.Select(unit => unit.Item).Distinct(StringComparer.Ordinal)];

    private static Mass Total(Terms<Mass> terms) => terms.Values.Aggregate(Mass.Zero, (sum, mass) => sum + mass);

    private static Length Total(Terms<Length> terms) => terms.Values.Aggregate(Length.Zero, (sum, length) => sum + length);
}
