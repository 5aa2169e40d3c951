using Google.OrTools.Sat;

namespace Advance.Planning;

/// <summary>The choice of ports as an integer model with one aim.</summary>
internal sealed class PortModel
{
    // In the solver's own units; half a second on a small machine.
    private const double Effort = 1;

    private readonly AimedModel model = new(Effort, isAssignment: true);
    private readonly PortProblem problem;
    private readonly List<(PortOption Option, BoolVar Taken)>[] taken;
    private readonly Lazy<LinearExpr> moved;

    /// <summary>A model of a problem.</summary>
    /// <param name="problem">The units.</param>
    /// <param name="left">The options that may be chosen, by unit.</param>
    /// <param name="limits">What aims of more weight may cost at most.</param>
    public PortModel(PortProblem problem, IReadOnlyList<List<PortOption>> left, IReadOnlyDictionary<PortAim, long> limits)
    {
        this.problem = problem;
        moved = new(PortsOfShared);
        taken = [.. left.Select(options => options.ConvertAll(option => (option, model.Model.NewBoolVar(""))))];
        foreach (var options in taken)
        {
            model.Model.AddExactlyOne(options.Select(option => option.Taken));
        }

        OneAPort();
        foreach (var (aim, limit) in limits.OrderBy(limit => limit.Key))
        {
            model.Model.Add(Cost(aim) <= limit);
        }
    }

    /// <summary>Asks for the least cost towards an aim.</summary>
    public PortModel Minimise(PortAim aim)
    {
        model.Minimise(Cost(aim));
        return this;
    }

    /// <summary>Asks that each of some units, one after the other, has the first place it can have.</summary>
    public PortModel MinimiseOrder(IReadOnlyList<int> units)
    {
        var terms = new List<(BoolVar Taken, long Cost)>();
        var weight = 1L;
        foreach (var options in units.Reverse().Select(unit => taken[unit]))
        {
            terms.AddRange(options.Select((option, rank) => (option.Taken, rank * weight)));
            weight *= options.Count;
        }

        model.Minimise(Sum(terms));
        return this;
    }

    /// <summary>The best choice that was found; null where none was, with the effort that is allowed.</summary>
    /// <param name="hint">A choice that keeps to the limits.</param>
    public PortOption[]? Solve(IReadOnlyList<PortOption> hint)
    {
        for (var unit = 0; unit < taken.Length; unit++)
        {
            foreach (var (option, isTaken) in taken[unit])
            {
                model.Model.AddHint(isTaken, option.Start == hint[unit].Start);
            }
        }

        return model.Solve() is { } answer ? [.. taken.Select(options => options.First(option => answer.Is(option.Taken)).Option)] : null;
    }

    // While one act is up, a port has one line: the act's own, or one that is up all day.
    private void OneAPort()
    {
        var live = Enumerable.Range(0, taken.Length)
            .SelectMany(unit => taken[unit].SelectMany(option => problem.Uses(unit, option.Option).Select(use => (use, option.Taken))))
            .GroupBy(use => use.use, use => use.Taken);
        foreach (var together in live.Where(uses => uses.Skip(1).Any()))
        {
            model.Model.AddAtMostOne(together);
        }
    }

    private LinearExpr Cost(PortAim aim) => aim == PortAim.Moved
        ? moved.Value
        : Sum(taken.SelectMany(options => options.Select(option => (option.Taken, option.Option.Cost(aim)))));

    private static LinearExpr Sum(IEnumerable<(BoolVar Taken, long Cost)> terms)
    {
        var costs = terms.Where(term => term.Cost != 0).ToList();
        return costs.Count == 0 ? LinearExpr.Constant(0) : LinearExpr.WeightedSum(costs.Select(term => term.Taken), costs.Select(term => term.Cost));
    }

    private LinearExpr PortsOfShared()
    {
        var used = new List<BoolVar>();
        foreach (var group in problem.Shared)
        {
            foreach (var start in group.SelectMany(unit => taken[unit]).ToLookup(option => option.Option.Start, option => option.Taken))
            {
                var isUsed = model.Model.NewBoolVar("");
                used.Add(isUsed);
                foreach (var isTaken in start)
                {
                    model.Model.AddImplication(isTaken, isUsed);
                }
            }
        }

        return used.Count == 0 ? LinearExpr.Constant(0) : LinearExpr.Sum(used) - problem.Shared.Count;
    }
}
