namespace Advance.Planning;

/// <summary>
/// Makes a choice of ports better, aim after aim. Nothing can cost less than each unit's cheapest option; where the choice costs just that,
/// only the cheapest options are kept, and a unit with one option left takes its ports from all others. Only where that does not prove the
/// choice the best is a model solved, of the options that prices for ports leave.
/// </summary>
internal sealed class PortSearch
{
    // Ties are broken for several units at once, as digits of one number that stays far below what an integer holds.
    private const long MostInOneModel = 1L << 40;

    private readonly PortProblem problem;
    private readonly List<PortOption>[] left;
    private readonly Dictionary<PortAim, long> limits = [];

    private PortSearch(PortProblem problem)
    {
        this.problem = problem;
        left = [.. problem.Options.Select(options => options.ToList())];
        Chosen = PortGreedy.Choose(problem);
    }

    /// <summary>An option for each unit; no two clash.</summary>
    public PortOption[] Chosen { get; private set; }

    /// <summary>The best options for all units.</summary>
    public static (PortProblem Problem, PortOption[] Chosen) Solve(PortProblem problem)
    {
        var apart = new PortSearch(problem);
        apart.Serve();
        var search = problem.Shared.Count > 0 && apart.Together() is { } together ? together : apart;
        search.Finish();
        return (search.problem, search.Chosen);
    }

    // Who has a port at all comes before who shares one: where sharing costs nothing of that, shared sources are one unit from here on.
    private PortSearch? Together()
    {
        var together = new PortSearch(problem.Together());
        together.Serve();
        return Enumerable.Range(0, (int)PortAim.Moved).All(aim => together.Costs[aim] == Costs[aim]) ? together : null;
    }

    private long[] Costs => problem.Weigh(Chosen);

    private void Serve()
    {
        for (var aim = PortAim.GivenUp; aim < PortAim.Moved; aim++)
        {
            Reach(aim);
        }
    }

    private void Finish()
    {
        for (var aim = PortAim.Moved; aim <= PortAim.Lead; aim++)
        {
            Reach(aim);
        }

        BreakTies();
    }

    private void Reach(PortAim aim)
    {
        if (Costs[(int)aim] > Least(aim))
        {
            Search(aim);
        }

        limits[aim] = Costs[(int)aim];
        if (aim != PortAim.Moved && limits[aim] == Cheapest(aim))
        {
            foreach (var options in left)
            {
                var least = options.Min(option => option.Cost(aim));
                options.RemoveAll(option => option.Cost(aim) > least);
            }

            Spread(Enumerable.Range(0, left.Length).Where(unit => left[unit].Count == 1));
        }
    }

    private void Search(PortAim aim)
    {
        if (aim == PortAim.Moved)
        {
            Improve(aim, left);
            return;
        }

        // Few options can be in a choice that costs no more than the bound; mostly there is one. If not, there are more that can be in a better one.
        var prices = PortPrices.Of(problem, left, limits, aim);
        foreach (var most in new[] { prices.Least, Costs[(int)aim] - 1 }.Distinct())
        {
            if (Costs[(int)aim] > prices.Least)
            {
                Improve(aim, prices.Within(most));
            }
        }

        prices.Within(Costs[(int)aim]).CopyTo(left, 0);
    }

    // The best choice of some of the options may cost more than the one that is there.
    private void Improve(PortAim aim, IReadOnlyList<List<PortOption>> options)
    {
        if (new PortModel(problem, options, limits).Minimise(aim).Solve(Chosen) is { } found && problem.Weigh(found)[(int)aim] < Costs[(int)aim])
        {
            Chosen = found;
        }
    }

    private long Cheapest(PortAim aim) => left.Sum(options => options.Min(option => option.Cost(aim)));

    private long Least(PortAim aim) => aim switch
    {
        PortAim.Moved => 0,
        PortAim.Without => Math.Max(Cheapest(aim), Crowded()),
        _ => Cheapest(aim),
    };

    // While an act plays, no more of its lines have a port than what is up all day leaves free.
    private long Crowded()
    {
        var wishes = problem.Units.SelectMany(unit => unit.Wishes).ToList();
        var allDayWithout = limits[PortAim.AllDayWithout];
        var free = problem.FreePorts - wishes.Where(wish => wish.Act is null).Sum(wish => wish.Count) + allDayWithout;
        return allDayWithout + wishes.Where(wish => wish.Act is not null).GroupBy(wish => wish.Act).Sum(act => Math.Max(0, act.Sum(wish => wish.Count) - free));
    }

    private void Spread(IEnumerable<int> first)
    {
        var settled = new Queue<int>(first);
        while (settled.TryDequeue(out var unit))
        {
            foreach (var other in Enumerable.Range(0, left.Length).Where(other => other != unit && left[other].Count > 1))
            {
                if (left[other].RemoveAll(option => problem.Clash(unit, left[unit][0], other, option)) > 0 && left[other].Count == 1)
                {
                    settled.Enqueue(other);
                }
            }
        }
    }

    // By address, each unit has the first place in the row that it can have.
    private void BreakTies()
    {
        for (var unit = 0; unit < left.Length; unit++)
        {
            var units = Chosen[unit].Start == left[unit][0].Start ? [unit] : Next(unit);
            if (units.Count > 1 || Chosen[unit].Start != left[unit][0].Start)
            {
                Chosen = new PortModel(problem, left, limits).MinimiseOrder(units).Solve(Chosen) ?? Chosen;
            }

            foreach (var settled in units)
            {
                left[settled] = [Chosen[settled]];
            }

            Spread(units);
            unit = units[^1];
        }
    }

    private List<int> Next(int first)
    {
        var units = new List<int>();
        var size = 1L;
        for (var unit = first; unit < left.Length && size * left[unit].Count <= MostInOneModel; unit++)
        {
            size *= left[unit].Count;
            units.Add(unit);
        }

        return units;
    }
}
