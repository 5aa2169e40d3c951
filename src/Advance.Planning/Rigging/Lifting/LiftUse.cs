namespace Advance.Planning;

/// <summary>How much of a capacity is used.</summary>
/// <param name="Share">1 is all of it.</param>
/// <param name="Part">Which part.</param>
/// <param name="Hoist">Which hoist, from 0; null for the truss.</param>
/// <param name="At">Where, m from the truss's left end; null for a hoist.</param>
/// <param name="Case">In which case.</param>
public sealed record LiftUse(double Share, LiftPart Part, int? Hoist, double? At, LiftCase Case)
{
    /// <summary>The largest of some; of those alike the first; null of none.</summary>
    internal static LiftUse? Worst(IEnumerable<LiftUse?> uses) =>
        uses.Aggregate((LiftUse?)null, (worst, use) => use is not null && (worst is null || use.Share > worst.Share * (1 + 1e-9)) ? use : worst);
}
