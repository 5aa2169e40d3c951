namespace Advance.Planning;

/// <summary>
/// A truss on hoists in all the cases that count: level, with chains that give and that do not; each hoist high or low, and up to eight hoists every
/// pattern of high and low; each hoist gone; and what it comes to at most however uneven it is.
/// </summary>
public sealed class LiftStudy
{
    private LiftStudy(HungBeam hung, LiftCases cases, double atRest, double moving, LiftCapacities? capacities)
    {
        Hung = hung;
        Rigid = cases.Level(isSoft: false);
        Soft = cases.HasSoft ? cases.Level(isSoft: true) : null;
        var level = Soft is null ? new[] { Rigid } : [Rigid, Soft];
        Level = LiftEnvelope.Of(level, capacities)!;
        AtRest = LiftEnvelope.Of([.. level, .. cases.Uneven(atRest)], capacities)!;
        Moving = moving == atRest ? AtRest : LiftEnvelope.Of([.. level, .. cases.Uneven(moving)], capacities)!;
        Gone = LiftEnvelope.Of(cases.Gone(), capacities)!;
        Bound = LiftEnvelope.Of(cases.Bound(), capacities)!;
    }

    /// <summary>What was studied.</summary>
    public HungBeam Hung { get; }

    /// <summary>Level, on chains and points that do not give.</summary>
    public LiftState Rigid { get; }

    /// <summary>Level, on chains and points that give; null where no stiffness is known.</summary>
    public LiftState? Soft { get; }

    /// <summary>The worse of both.</summary>
    public LiftEnvelope Level { get; }

    /// <summary>Level and uneven by as much as it may be at rest.</summary>
    public LiftEnvelope AtRest { get; }

    /// <summary>Level and uneven by as much as it may be while it moves; forces are those of weight alone, without a dynamic factor.</summary>
    public LiftEnvelope Moving { get; }

    /// <summary>Each hoist gone in turn; what tips the truss then counts at the hoists only.</summary>
    public LiftEnvelope Gone { get; }

    /// <summary>However uneven: the worst of all pairs of hoists on either side of the centre of gravity. No stiffness enters it.</summary>
    public LiftEnvelope Bound { get; }

    /// <summary>The hoists without which the truss tips, from 0.</summary>
    public IReadOnlyList<int> TipsWithout => [.. Gone.States.Where(state => state.Tips && !state.Case.IsSoft).Select(state => state.Case.Gone!.Value)];

    /// <summary>All cases; null where the centre of gravity lies outside the outermost hoists, or not under the only one: there nothing holds it level.</summary>
    /// <param name="hung">The truss.</param>
    /// <param name="atRest">How far a hook may be off level at rest, m, 0 or more.</param>
    /// <param name="moving">And while it moves, m, 0 or more.</param>
    /// <param name="capacities">What hoists and truss may carry, so that each envelope tells what is used most; null to leave that out.</param>
    public static LiftStudy? Of(HungBeam hung, double atRest, double moving, LiftCapacities? capacities = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(atRest);
        ArgumentOutOfRangeException.ThrowIfNegative(moving);
        return hung.IsInside ? new(hung, new LiftCases(hung), atRest, moving, capacities) : null;
    }

    /// <summary>
    /// The most that a hoist carries however uneven all are: <c>R = W |x_far − x_cg| / |x_far − x|</c>, W where it stands under the centre of gravity;
    /// x_far is the outermost hoist beyond the centre of gravity.
    /// </summary>
    /// <param name="hung">A truss whose centre of gravity lies between its outermost hoists.</param>
    /// <param name="hoist">From 0.</param>
    public static double MostOf(HungBeam hung, int hoist)
    {
        var at = hung.Hoists[hoist].At;
        var far = at < hung.Centre ? hung.Hoists[^1].At : hung.Hoists[0].At;
        return far == at || at == hung.Centre ? hung.Weight : Math.Min(1, Math.Abs(far - hung.Centre) / Math.Abs(far - at)) * hung.Weight;
    }
}
