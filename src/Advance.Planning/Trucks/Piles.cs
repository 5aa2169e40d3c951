namespace Advance.Planning;

/// <summary>Piles up a load: the largest first, each where there is room on what stands already.</summary>
internal static class Piles
{
    /// <summary>What stands on the floor, in the order it was put there; what nobody knows the size of is left out.</summary>
    /// <param name="units">What is loaded.</param>
    /// <param name="roof">How high a vehicle is inside, in metres; null where nobody knows, and then nothing is piled up.</param>
    public static IReadOnlyList<Piled> Of(IEnumerable<TravellingUnit> units, double? roof)
    {
        var piles = new List<Piled>();
        var sized = units.Select(unit => (Unit: unit, Bulk: Bulk.Of(unit.Size))).Where(found => found.Bulk is not null)
            .OrderByDescending(found => found.Bulk!.Value.Floor)
            .ThenByDescending(found => found.Unit.Gross.Value?.Kilograms ?? double.MaxValue)
            .ThenBy(found => found.Unit.Address);
        foreach (var (unit, bulk) in sized)
        {
            for (var number = 0; number < unit.Count; number++)
            {
                Put(unit, bulk!.Value, piles, roof);
            }
        }

        return piles;
    }

    private static void Put(TravellingUnit unit, Bulk bulk, List<Piled> piles, double? roof)
    {
        double? kilograms = unit.Gross.Value?.Kilograms;
        int? stacks = unit.Kind?.Stacks is { IsKnown: true } given ? given.Value : null;
        if (kilograms is not { } weight || stacks is not { } most || roof is not { } high || !piles.Exists(pile => pile.TryPut(bulk, weight, most, high)))
        {
            piles.Add(new Piled(bulk, kilograms, stacks));
        }
    }
}
