using Advance.Domain.Companies;
using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>The heaviest thing of a task, and how many lift it.</summary>
/// <param name="Item">Id of the kind.</param>
/// <param name="Weight">Of one; known.</param>
/// <param name="Hands">1, 2 or 4; null for what goes by forks or on wheels.</param>
public sealed record Lift(string Item, Figure<Mass> Weight, int? Hands)
{
    /// <summary>The heaviest of some; null where no weight is known.</summary>
    public static Lift? Heaviest(IEnumerable<(string Item, Figure<Mass> Weight)> things, LiftLimits limits)
    {
        var known = things.Where(thing => thing.Weight.Value is not null).ToList();
        if (known.Count == 0)
        {
            return null;
        }

        var (item, weight) = known.MaxBy(thing => thing.Weight.Value!.Value);
        return new Lift(item, weight, Lifting.Hands(weight.Value!.Value, limits.One, limits.Two, limits.Four));
    }
}
