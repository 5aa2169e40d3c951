using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Domain.Venues;
using UnitsNet;

namespace Advance.Planning;

/// <summary>How long it takes to empty a vehicle, by what it may carry, and to push it all in.</summary>
internal static class Unloading
{
    private const double MostOfAVan = 1500;
    private const double MostOfATruck = 4000;
    private const int StepsDouble = 2;

    private static readonly Length PushOfPolicy = Length.FromMeters(50);

    /// <summary>To empty one vehicle; unknown where nobody knows what it carries.</summary>
    public static Figure<Duration> OfVehicle(Truck truck, Stock stock, TaskTimes times)
    {
        var doubts = Doubts.Of(truck.Item.Doubt);
        return ClassOf(truck, stock, times) is { } found
            ? Labour.For(new Figure<int>(1, doubts, Reason.Derived.It), found.Policy, found.Work)
            : new Figure<Duration>(null, doubts, Reason.Derived.It);
    }

    /// <summary>How many hands that takes at once.</summary>
    public static int HandsFor(Truck truck, Stock stock, TaskTimes times) => (ClassOf(truck, stock, times)?.Work ?? times.Van).Hands;

    /// <summary>To push everything in over the whole way; null where nobody says how far it is.</summary>
    public static Figure<Duration>? Push(Venue venue, IReadOnlyList<TravellingUnit> units, TaskTimes times)
    {
        var steps = venue.Access.Or([]);
        var lengths = steps.Where(step => step.Long is { IsKnown: true }).Select(step => Figure.From(step.Long!.Value)).ToList();
        if (lengths.Count == 0)
        {
            return null;
        }

        var far = Sum.Of("way in", "L = Σ lᵢ", Publication.Arithmetic)
            .PutAll("lᵢ", lengths)
            .Gives(terms => terms.Values.Aggregate(Length.Zero, (sum, length) => sum + length));
        var pushes = Sum.Of("pushes of policy's length", "x = q · L / B", Publication.CommonPractice)
            .Put("q", Figure.Policy("tasks push", steps.Any(step => step.Steps > 0) ? StepsDouble : 1))
            .Put("L", far)
            .Put("B", Figure.Policy("tasks push", PushOfPolicy))
            .Gives((twice, length, of) => twice * length.Meters / of.Meters);
        return Sum.Of("work, push", "p = n · x · m · h", Publication.CommonPractice)
            .Put("n", CountOf(units))
            .Put("x", pushes)
            .Put("m", Figure.Policy("tasks push", times.Push.Time))
            .Put("h", Figure.Policy("tasks push", times.Push.Hands))
            .Gives((count, times50, time, hands) => time * count * times50 * hands);
    }

    private static Figure<int> CountOf(IReadOnlyList<TravellingUnit> units) => new(
        units.Sum(unit => unit.Count), units.Aggregate(Doubts.None, (sum, unit) => sum.With(unit.Gross.RestsOn)), Reason.Derived.It);

    private static (string Policy, Work Work)? ClassOf(Truck truck, Stock stock, TaskTimes times)
    {
        var kind = truck.Item.Is(out var item) ? stock.Find(item) : null;
        return kind?.Payload is { } payload && payload.Is(out var most)
            ? most.Kilograms <= MostOfAVan ? ("van", times.Van) : most.Kilograms <= MostOfATruck ? ("truck", times.Truck) : ("trailer", times.Trailer)
            : null;
    }
}
