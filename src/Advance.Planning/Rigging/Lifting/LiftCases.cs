using Advance.Handbook;

namespace Advance.Planning;

/// <summary>Works out the cases of one truss.</summary>
internal sealed class LiftCases
{
    private const int MostPatterned = 8;
    private readonly HungBeam hung;
    private readonly PullOnly rigid;
    private readonly PullOnly soft;
    private readonly Dictionary<bool, PullOnlySolution> level;

    /// <summary>Of a truss whose centre of gravity lies between its outermost hoists.</summary>
    public LiftCases(HungBeam hung)
    {
        this.hung = hung;
        (rigid, soft) = (new PullOnly(hung, isSoft: false), new PullOnly(hung, isSoft: true));
        level = Softness.ToDictionary(isSoft => isSoft, isSoft => Solver(isSoft).Solve(new double[Count])!);
    }

    /// <summary>Whether any stiffness of a chain is known.</summary>
    public bool HasSoft => hung.Hoists.Any(hoist => hoist.Stiffness is not null);

    private int Count => hung.Hoists.Count;

    private bool[] Softness => HasSoft ? [false, true] : [false];

    /// <summary>All level.</summary>
    public LiftState Level(bool isSoft) => StateOf(LiftCase.Level(Count, isSoft), level[isSoft]) with
    {
        Solution = level[isSoft].Heights is null ? null : Solver(isSoft).SolveOn(level[isSoft].Set, new double[Count]),
    };

    /// <summary>Each hook high or low, and for few hoists each pattern of high and low. One hoist alone is never uneven.</summary>
    /// <param name="delta">m; at 0 there are none.</param>
    public IReadOnlyList<LiftState> Uneven(double delta) => delta == 0 || Count == 1 ? [] :
    [
        .. from isSoft in Softness
        from state in Solved(Singles(delta).Concat(Count <= MostPatterned ? Patterns(delta) : []), isSoft)
        select state,
    ];

    /// <summary>Each hoist gone.</summary>
    public IReadOnlyList<LiftState> Gone() =>
    [
        .. from isSoft in Softness
        from gone in Enumerable.Range(0, Count)
        let lift = LiftCase.Without(gone, Count, isSoft)
        select Solver(isSoft).Solve(new double[Count], gone) is { } solved ? StateOf(lift, solved) : Tipped(lift, gone),
    ];

    /// <summary>Each two hoists on either side of the centre of gravity carrying all.</summary>
    public IReadOnlyList<LiftState> Bound() =>
    [
        .. from first in Enumerable.Range(0, Count)
        from second in Enumerable.Range(first, Count - first)
        where hung.Holds(hung.Hoists[first].At, hung.Hoists[second].At)
        select OnPair(first, second),
    ];

    private PullOnly Solver(bool isSoft) => isSoft ? soft : rigid;

    // Each starts from the one before, which is like it.
    private IEnumerable<LiftState> Solved(IEnumerable<double[]> unevennesses, bool isSoft)
    {
        var before = level[isSoft];
        foreach (var offsets in unevennesses)
        {
            before = Solver(isSoft).Solve(offsets, null, before.Levels)!;
            yield return StateOf(LiftCase.Of(offsets, isSoft), before);
        }
    }

    private LiftState StateOf(LiftCase lift, PullOnlySolution solved) => new(lift, solved.Levels, new BeamDiagram(hung.Continuous.Layout, solved.Levels), null);

    // It turns until the centre of gravity hangs under the nearest hoist that is left; where none is left it falls, and no hoist carries anything.
    private LiftState Tipped(LiftCase lift, int gone)
    {
        var levels = new double[Count];
        var left = Enumerable.Range(0, Count).Where(hoist => hoist != gone).ToList();
        if (left.Count > 0)
        {
            levels[left.MinBy(hoist => Math.Abs(hung.Hoists[hoist].At - hung.Centre))] = hung.Weight;
        }

        return new(lift, levels, null, null);
    }

    private LiftState OnPair(int first, int second)
    {
        var levels = new double[Count];
        var (from, to) = (hung.Hoists[first].At, hung.Hoists[second].At);
        var share = first == second ? 1 : Math.Clamp((hung.Centre - from) / (to - from), 0, 1);
        levels[first] = hung.Weight * (1 - share);
        levels[second] += hung.Weight * share;
        return new(LiftCase.On(first, second, Count), levels, new BeamDiagram(hung.Continuous.Layout, levels), null);
    }

    private IEnumerable<double[]> Singles(double delta) =>
        from hoist in Enumerable.Range(0, Count)
        from offset in new[] { delta, -delta }
        select Offsets(other => other == hoist ? offset : 0);

    // In an order in which one hook moves at a time; all high or all low is level.
    private IEnumerable<double[]> Patterns(double delta) =>
        from step in Enumerable.Range(0, 1 << Count)
        let bits = step ^ (step >> 1)
        where bits != 0 && bits != (1 << Count) - 1
        select Offsets(hoist => (bits >> hoist & 1) == 1 ? delta : -delta);

    private double[] Offsets(Func<int, double> of) => [.. Enumerable.Range(0, Count).Select(of)];
}
