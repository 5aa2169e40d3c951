using Google.OrTools.Sat;

namespace Advance.Planning;

/// <summary>A problem of circuits as an integer model, with the aims of <see cref="CircuitScore"/> in their order.</summary>
internal sealed class CircuitModel
{
    // What a coefficient may be without the solver's sums overflowing.
    private const long MostCoefficient = 1L << 40;
    private const int MostUse = 1_000_000_000;

    private readonly AimedModel aimed = new();
    private readonly CircuitProblem problem;
    private readonly BoolVar[][] takes;

    /// <param name="problem">What is asked.</param>
    /// <param name="first">An answer to start from.</param>
    public CircuitModel(CircuitProblem problem, IReadOnlyList<CircuitOption?> first)
    {
        this.problem = problem;
        takes = [.. problem.Wishes.Select((wish, index) => wish.Options.Select((option, rank) => Take(index, rank, first[index] == option)).ToArray())];
        foreach (var options in takes.Where(options => options.Length > 0))
        {
            Model.AddAtMostOne(options);
        }

        for (var group = 0; group < problem.Groups.Count; group++)
        {
            if (Takers(option => option.Group == group) is { Count: > 0 } takers)
            {
                Model.Add(LinearExpr.Sum(takers.Select(taker => taker.Take)) <= problem.Groups[group].Slots);
            }
        }

        Aim();
    }

    private CpModel Model => aimed.Model;

    /// <summary>Solves it; null where no answer was found with the effort allowed.</summary>
    public Answer? Solve() => aimed.Solve();

    /// <summary>For each wish the option that was taken.</summary>
    public IReadOnlyList<CircuitOption?> Read(Answer answer) =>
    [
        .. problem.Wishes.Select((wish, index) => wish.Options.Where((_, rank) => answer.Is(takes[index][rank])).FirstOrDefault()),
    ];

    private BoolVar Take(int wish, int rank, bool isFirst)
    {
        var take = Model.NewBoolVar($"{wish} {rank}");
        Model.AddHint(take, isFirst ? 1 : 0);
        return take;
    }

    private void Aim()
    {
        Minimise(takes.SelectMany((options, wish) => problem.Wishes[wish].IsFixed
            ? options.Where((_, rank) => problem.Wishes[wish].Options[rank].Keeps).Select(take => (take, -1L))
            : []));
        Minimise(takes.SelectMany((options, wish) => options.Select(take => (take, -(long)problem.Wishes[wish].Units))));
        MinimiseOver();
        MinimiseStrain();
        Minimise(takes.SelectMany((options, wish) => options.Where((_, rank) => problem.Wishes[wish].Options[rank].Group == problem.Wishes[wish].Earlier).Select(take => (take, -1L))));
        MinimiseEarths();
        MinimiseUse();
        MinimiseSpread();
        Minimise(takes.SelectMany((options, wish) => options.Select((take, rank) => (take, (long)problem.Wishes[wish].Options[rank].Distance))));
        Minimise(takes.SelectMany(options => options.Select(take => (take, 1L))));
        MinimiseRanks();
    }

    private void Minimise(IEnumerable<(BoolVar Take, long Price)> terms)
    {
        var all = terms.Where(term => term.Price != 0).ToList();
        if (all.Count > 0)
        {
            aimed.Minimise(LinearExpr.WeightedSum(all.Select(term => term.Take), all.Select(term => term.Price)));
        }
    }

    private void MinimiseOver()
    {
        var overs = new List<LinearExpr>();
        foreach (var (current, limit) in Carried())
        {
            var over = Model.NewIntVar(0, int.MaxValue, "over");
            Model.Add(over >= current - limit);
            overs.Add(over);
        }

        var outlets = Outlets((draw, limit) => Math.Max(0L, draw - limit)).ToList();
        overs.AddRange(outlets.Select(one => one.Take * one.Price));
        aimed.Minimise(LinearExpr.Sum(overs));
    }

    private void MinimiseStrain()
    {
        var strains = Takers(_ => true)
            .Select(taker => (taker.Take, Price: CircuitStrain.On(problem.Groups[taker.Option.Group], problem.Wishes[taker.Wish])))
            .Where(one => one.Price > 0)
            .Select(one => one.Take * one.Price)
            .ToList();
        for (var guard = 0; guard < problem.Guards.Count; guard++)
        {
            AddStrain(strains, problem.Guards[guard], guard);
        }

        foreach (var box in problem.Groups.Select(group => group.Box).OfType<int>().Distinct().Order())
        {
            AddStrain(strains, box);
        }

        if (strains.Count > 0)
        {
            aimed.Minimise(LinearExpr.Sum(strains));
        }
    }

    private void AddStrain(List<LinearExpr> strains, CircuitGuard guard, int index)
    {
        long Burden(int wish) => guard.IsLeakage ? problem.Wishes[wish].Leakage : problem.Wishes[wish].Inrush;
        var takers = Takers(option => problem.Groups[option.Group].Guards.Contains(index)).Where(taker => Burden(taker.Wish) > 0).ToList();
        if (problem.Wishes.Select((_, wish) => Burden(wish)).Sum() <= guard.Limit || takers.Count == 0)
        {
            return;
        }

        var sum = LinearExpr.WeightedSum(takers.Select(taker => taker.Take), takers.Select(taker => Burden(taker.Wish)));
        var strain = Model.NewIntVar(0, int.MaxValue, "strain");
        Model.Add(guard.Limit > 0 ? strain * guard.Limit >= 1000 * (sum - guard.Limit) : strain >= 1000 * sum);
        strains.Add(strain);
    }

    // A mean is no more than its largest: where each outlet by itself is below what any number bears, so are all.
    private void AddStrain(List<LinearExpr> strains, int box)
    {
        var takers = Takers(option => problem.Groups[option.Group] is { Limit: > 0 } group && group.Box == box)
            .Select(taker => (taker.Take, Loading: CircuitStrain.Loading(problem.Groups[taker.Option.Group], problem.Wishes[taker.Wish]))).ToList();
        if (takers.TrueForAll(taker => taker.Loading <= CircuitStrain.Always))
        {
            return;
        }

        var most = Math.Min(takers.Count, problem.Wishes.Count);
        var count = Model.NewIntVar(0, most, "count");
        Model.Add(count == LinearExpr.Sum(takers.Select(taker => taker.Take)));
        var bears = Model.NewIntVar(0, int.MaxValue, "bears");
        Model.AddElement(count, [.. Enumerable.Range(0, most + 1).Select(CircuitStrain.Bears)], bears);
        var strain = Model.NewIntVar(0, int.MaxValue, "strain");
        Model.Add(strain >= LinearExpr.WeightedSum(takers.Select(taker => taker.Take), takers.Select(taker => taker.Loading)) - bears);
        strains.Add(strain);
    }

    private void MinimiseUse()
    {
        var use = Model.NewIntVar(0, MostUse, "use");
        foreach (var (current, limit) in Carried().Where(one => one.Limit > 0))
        {
            Model.Add(1000 * current <= limit * (use + CircuitScore.Comfortable));
        }

        foreach (var (take, price) in Outlets((draw, limit) => Math.Min(MostUse, CircuitScore.AboveComfort(draw, limit)), worst: true))
        {
            Model.Add(use >= take * price);
        }

        aimed.Minimise(use);
    }

    private void MinimiseEarths()
    {
        var meets = new List<LinearExpr>();
        for (var supply = 0; supply <= problem.Groups.Select(group => group.Supply).DefaultIfEmpty().Max(); supply++)
        {
            var sound = Any(Takers(CircuitEarth.Sound, supply));
            var light = Any(Takers(CircuitEarth.Light, supply));
            if (sound is null)
            {
                continue;
            }

            meets.Add(sound);
            if (light is not null)
            {
                var both = Model.NewBoolVar("both");
                Model.Add(both >= sound + light - 1);
                meets.Add(both);
            }
        }

        if (meets.Count > 0)
        {
            aimed.Minimise(LinearExpr.Sum(meets));
        }
    }

    private void MinimiseSpread()
    {
        var spreads = new List<LinearExpr>();
        foreach (var legs in Enumerable.Range(0, problem.Nodes.Count).Where(node => problem.Nodes[node].Balanced is not null).GroupBy(node => problem.Nodes[node].Balanced))
        {
            var spread = Model.NewIntVar(0, int.MaxValue, "spread");
            spreads.Add(spread);
            for (var state = 0; state < problem.States; state++)
            {
                var currents = legs.Select(leg => On(leg, state)).ToList();
                for (var one = 0; one < currents.Count; one++)
                {
                    for (var other = 0; other < currents.Count; other++)
                    {
                        Model.Add(spread >= currents[one] - currents[other]);
                    }
                }
            }
        }

        if (spreads.Count > 0)
        {
            aimed.Minimise(LinearExpr.Sum(spreads));
        }
    }

    // The first option of the first wish, then of the next: one aim for as many wishes as a coefficient holds.
    private void MinimiseRanks()
    {
        var most = takes.Select(options => options.Length).DefaultIfEmpty().Max() + 1;
        var terms = new List<(BoolVar Take, long Price)>();
        var weight = MostCoefficient;
        for (var wish = 0; wish < takes.Length; wish++)
        {
            if (weight < most)
            {
                Minimise(terms);
                (terms, weight) = ([], MostCoefficient);
            }

            weight /= most;
            terms.AddRange(takes[wish].Select((take, rank) => (take, (rank - (most - 1)) * weight)));
        }

        Minimise(terms);
    }

    // What each node with a limit carries, in each state.
    private IEnumerable<(LinearExpr Current, int Limit)> Carried() =>
        from node in Enumerable.Range(0, problem.Nodes.Count)
        where problem.Nodes[node].Limit is not null
        from state in Enumerable.Range(0, problem.States)
        select (On(node, state), problem.Nodes[node].Limit!.Value);

    private LinearExpr On(int node, int state)
    {
        var takers = Takers(option => problem.Groups[option.Group].Nodes.Contains(node));
        return LinearExpr.WeightedSum(takers.Select(taker => taker.Take), takers.Select(taker => (long)problem.Wishes[taker.Wish].Draws[state]))
            + problem.Nodes[node].Others[state];
    }

    // A price for each taking of an outlet with a limit: over all states, or in the worst of them.
    private IEnumerable<(BoolVar Take, long Price)> Outlets(Func<long, int, long> price, bool worst = false)
    {
        foreach (var (take, wish, option) in Takers(_ => true))
        {
            if (problem.Groups[option.Group].Limit is { } limit)
            {
                var prices = problem.Wishes[wish].Draws.Select(draw => price(draw, limit)).ToList();
                var all = worst ? prices.Max() : prices.Sum();
                if (all > 0)
                {
                    yield return (take, all);
                }
            }
        }
    }

    private BoolVar? Any(List<BoolVar> takers)
    {
        if (takers.Count == 0)
        {
            return null;
        }

        var any = Model.NewBoolVar("any");
        takers.ForEach(taker => Model.AddImplication(taker, any));
        return any;
    }

    private List<BoolVar> Takers(CircuitEarth earth, int supply) =>
        [.. Takers(option => problem.Groups[option.Group].Supply == supply).Where(taker => problem.Wishes[taker.Wish].Earth == earth).Select(taker => taker.Take)];

    private List<(BoolVar Take, int Wish, CircuitOption Option)> Takers(Func<CircuitOption, bool> isMeant) =>
    [
        .. takes.SelectMany((options, wish) => options.Select((take, rank) => (Take: take, Wish: wish, Option: problem.Wishes[wish].Options[rank])))
            .Where(taker => isMeant(taker.Option)),
    ];
}
