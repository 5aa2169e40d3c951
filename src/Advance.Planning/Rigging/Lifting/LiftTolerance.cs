namespace Advance.Planning;

/// <summary>How far a hoist may be off level until something reaches its capacity, the others level.</summary>
/// <param name="Hoist">From 0.</param>
/// <param name="Raise">How far it may be high, m; null where no height within the truss's length does it.</param>
/// <param name="RaiseUse">What reaches its capacity then.</param>
/// <param name="Drop">How far it may be low, m; null where no depth does it.</param>
/// <param name="DropUse">What reaches its capacity then.</param>
public sealed record LiftTolerance(int Hoist, double? Raise, LiftUse? RaiseUse, double? Drop, LiftUse? DropUse)
{
    /// <summary>The lesser of both, m; null where neither does it.</summary>
    public double? Least => Raise is { } raise && Drop is { } drop ? Math.Min(raise, drop) : Raise ?? Drop;

    /// <summary>
    /// Of each hoist: 0 where something has reached its capacity level already. Both with chains that give, where their stiffness is known, and with
    /// such as do not; the lesser counts. Empty where nothing holds the truss level.
    /// </summary>
    /// <param name="hung">The truss.</param>
    /// <param name="capacities">What hoists and truss may carry; what is unknown does not count.</param>
    public static IReadOnlyList<LiftTolerance> Of(HungBeam hung, LiftCapacities capacities)
    {
        if (!hung.IsInside || hung.Hoists.Count < 2)
        {
            return [];
        }

        var softness = hung.Hoists.Any(hoist => hoist.Stiffness is not null) ? new[] { false, true } : [false];
        var searches = softness.Select(isSoft => new ToleranceSearch(hung, capacities, isSoft)).ToList();
        return [.. Enumerable.Range(0, hung.Hoists.Count).Select(hoist => Of(hoist, searches))];
    }

    private static LiftTolerance Of(int hoist, List<ToleranceSearch> searches)
    {
        var (raise, raiseUse) = Lesser(searches.Select(search => search.Find(hoist, 1)));
        var (drop, dropUse) = Lesser(searches.Select(search => search.Find(hoist, -1)));
        return new(hoist, raise, raiseUse, drop, dropUse);
    }

    private static (double? By, LiftUse? Use) Lesser(IEnumerable<(double? By, LiftUse? Use)> found) =>
        found.Aggregate((lesser, other) => other.By < lesser.By || lesser.By is null ? other : lesser);
}
