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
    public static TruckLoad? Of(Gig gig, Stock stock, IReadOnlyList<TravellingUnit> units)
    {
        if (gig.Trucks.Count == 0)
        {
            return null;
        }

        var spaces = gig.Trucks.Select(truck => LoadSpace.Of(truck.Item, stock)).ToList();
        return new TruckLoad(
            string.Join(" + ", gig.Trucks.Select(truck => truck.Name)),
            gig.Trucks[0].At,
            Sum.Of("payload", "P = Σ pᵢ", Publication.Arithmetic).PutAll("pᵢ", spaces.Select(space => space.Payload)).Gives(Total),
            units.Aggregate(Mass.Zero, (sum, unit) => sum + ((unit.Gross.Value ?? Mass.Zero) * unit.Count)),
            FloorOf(units, spaces),
            Sum.Of("length of floor", "D = Σ dᵢ", Publication.Arithmetic).PutAll("dᵢ", spaces.Select(space => space.Depth)).Gives(Total),
            VolumeOf(units),
            Sum.Of("load space", "S = Σ sᵢ", Publication.Arithmetic).PutAll("sᵢ", spaces.Select(space => space.Volume)).Gives(terms => terms.Values.Sum()),
            [.. units.Where(unit => GoesNowhere(unit, spaces)).Select(unit => unit.Name).Distinct(StringComparer.Ordinal)],
            Items(units.Where(unit => unit.Kind?.Stacks is not { IsKnown: true })),
            Items(units.Where(unit => Bulk.Of(unit.Size) is null)));
    }

    // Of several vehicles the narrowest counts: what stands beside another in it does so in all.
    private static Figure<Length> FloorOf(IReadOnlyList<TravellingUnit> units, List<LoadSpace> spaces)
    {
        var narrow = spaces.MinBy(space => space.Inside?.Width ?? 0)!;
        return Sum.Of("length of floor taken", "L = Σ lᵢ", Publication.Arithmetic)
            .PutAll("lᵢ", units.GroupBy(unit => unit.Item, StringComparer.Ordinal).Select(group => FloorOf([.. group], narrow)))
            .Gives(Total);
    }

    private static Figure<Length> FloorOf(IReadOnlyList<TravellingUnit> alike, LoadSpace space) =>
        Sum.Of($"length of floor for {alike[0].Item}", "l = ⌈n / s⌉ · f / W", Publication.Arithmetic)
            .Put("n", Figure.Count(alike.Sum(unit => unit.Count)))
            .Put("s", StackOf(alike[0], space))
            .Put("f", Measure(alike[0], bulk => bulk.Floor))
            .Put("W", space.Width)
            .Gives((count, stack, floor, width) => Length.FromMeters(Math.Ceiling((double)count / stack) * floor / width.Meters));

    // As many as the stock says, as far as the roof allows; what nobody says anything about stands alone.
    private static Figure<int> StackOf(TravellingUnit unit, LoadSpace space)
    {
        var stated = unit.Kind?.Stacks is { } given ? Figure.From(given) : Figure.Count(1);
        var height = Bulk.Of(unit.Size)?.Height;
        var roof = height > 0 && space.Inside is { } inside ? (int)Math.Floor((inside.Height / height.Value) + 1e-9) : 1;
        return stated with { Value = Math.Max(1, Math.Min(stated.Value ?? 1, roof)), Why = Reason.Derived.It };
    }

    private static Figure<double> VolumeOf(IReadOnlyList<TravellingUnit> units) =>
        Sum.Of("volume of the load", "V = Σ vᵢ", Publication.Arithmetic)
            .PutAll("vᵢ", units.Select(unit => Measure(unit, bulk => bulk.Volume * unit.Count)))
            .Gives(terms => terms.Values.Sum());

    private static Figure<double> Measure(TravellingUnit unit, Func<Bulk, double> measure) => new(
        Bulk.Of(unit.Size) is { } bulk ? measure(bulk) : null, Doubts.Of(unit.Size?.Doubt), new Reason.Fixed(unit.Size?.At ?? Mark.Nowhere));

    private static bool GoesNowhere(TravellingUnit unit, List<LoadSpace> spaces) =>
        Bulk.Of(unit.Size) is { } bulk && spaces.TrueForAll(space => space.Inside is { } inside && !bulk.GoesInto(inside));

    private static List<string> Items(IEnumerable<TravellingUnit> units) => [.. units.Select(unit => unit.Item).Distinct(StringComparer.Ordinal)];

    private static Mass Total(Terms<Mass> terms) => terms.Values.Aggregate(Mass.Zero, (sum, mass) => sum + mass);

    private static Length Total(Terms<Length> terms) => terms.Values.Aggregate(Length.Zero, (sum, length) => sum + length);
}
