namespace Advance.Planning;

/// <summary>An answer in the making: what everything carries, and the score, kept up as wishes are put on outlets and lifted off.</summary>
internal sealed class CircuitLoading
{
    // Utilisations up to eight times a limit are counted one by one; what is above that is looked for.
    private const int Counted = 8192;

    private const long Hottest = 1L << 40;

    private readonly CircuitProblem problem;
    private readonly int states;
    private readonly int[][] balances;
    private readonly int[][] legs;
    private readonly int[][] carriers;
    private readonly long[] currents;
    private readonly int[] uses;
    private readonly int[] outletUses;
    private readonly int[] counts = new int[Counted + 1];
    private readonly int[] free;
    private readonly int[] taken;
    private readonly long[] guards;
    private readonly long[] boxes;
    private readonly int[] boxed;
    private readonly int[] sound;
    private readonly int[] light;
    private readonly long[] spreads;
    private readonly int target;
    private int broken;
    private int dark;
    private long over;
    private long strain;
    private int changed;
    private int earths;
    private int worst;
    private long spread;
    private long distance;
    private int opened;

    /// <param name="problem">What is asked.</param>
    /// <param name="target">What utilisation above comfort nothing need be below, per mille.</param>
    public CircuitLoading(CircuitProblem problem, int target = 0)
    {
        (this.problem, this.target, states) = (problem, target, problem.States);
        (currents, uses) = (new long[problem.Nodes.Count * states], new int[problem.Nodes.Count * states]);
        outletUses = new int[problem.Wishes.Count];
        free = [.. problem.Groups.Select(group => group.Slots)];
        taken = [.. Enumerable.Repeat(-1, problem.Wishes.Count)];
        guards = new long[problem.Guards.Count];
        var most = problem.Groups.Select(group => Math.Max(group.Supply, group.Box ?? 0)).DefaultIfEmpty().Max() + 1;
        (boxes, boxed, sound, light) = (new long[most], new int[most], new int[most], new int[most]);
        legs = [.. Enumerable.Range(0, problem.Nodes.Count).Where(node => problem.Nodes[node].Balanced is not null).GroupBy(node => problem.Nodes[node].Balanced).Select(nodes => nodes.ToArray())];
        spreads = new long[legs.Length];
        carriers = [.. problem.Groups.Select(group => group.Nodes.ToArray())];
        balances = [.. problem.Groups.Select(group => Enumerable.Range(0, legs.Length).Where(one => legs[one].Any(group.Nodes.Contains)).ToArray())];
        broken = problem.Wishes.Count(wish => wish.IsFixed);
        dark = problem.Wishes.Sum(wish => wish.Units);
        changed = problem.Wishes.Count(wish => wish.Earlier is not null);
        Begin();
    }

    /// <summary>The score as it stands.</summary>
    public CircuitScore Score => new(broken, dark, over, strain, changed, earths, Worst(), spread, distance, opened);

    /// <summary>Squares of how far everything is above the target, added: what falls step by step where the worst alone would not move.</summary>
    public long Heat { get; private set; }

    /// <summary>For each wish the option that was taken.</summary>
    public IReadOnlyList<CircuitOption?> Answer => [.. taken.Select((rank, wish) => rank < 0 ? null : problem.Wishes[wish].Options[rank])];

    /// <summary>The place of what a wish has among its options; -1 for none.</summary>
    public int Of(int wish) => taken[wish];

    /// <summary>How many outlets of a group are left.</summary>
    public int Free(int group) => free[group];

    /// <summary>The group that a wish hangs on; -1 for none.</summary>
    public int GroupOf(int wish) => taken[wish] < 0 ? -1 : problem.Wishes[wish].Options[taken[wish]].Group;

    /// <summary>Whether something that a wish hangs on is above the target.</summary>
    public bool IsHot(int wish)
    {
        if (taken[wish] < 0)
        {
            return true;
        }

        if (outletUses[wish] > target)
        {
            return true;
        }

        foreach (var node in carriers[GroupOf(wish)])
        {
            for (var state = 0; state < states; state++)
            {
                if (uses[(node * states) + state] > target)
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>How full the fullest place on the way of a wish is, whatever is comfortable; then how full all of them are.</summary>
    public long FillOf(int wish)
    {
        var group = problem.Groups[GroupOf(wish)];
        var (most, sum) = (0L, 0L);
        foreach (var node in group.Nodes)
        {
            if (problem.Nodes[node].Limit is not { } limit || limit <= 0)
            {
                continue;
            }

            for (var state = 0; state < states; state++)
            {
                var share = 100_000 * currents[(node * states) + state] / limit;
                (most, sum) = (Math.Max(most, share), sum + share);
            }
        }

        return (most * 1_000_000) + Math.Min(sum / Math.Max(1, states), 999_999);
    }

    /// <summary>Puts a wish, which has none, on an outlet of one of its options; the caller sees to it that one is free.</summary>
    public void Put(int wish, int rank)
    {
        taken[wish] = rank;
        Turn(problem.Wishes[wish], problem.Wishes[wish].Options[rank], 1);
        outletUses[wish] = OutletUse(wish);
        Count(outletUses[wish], 1);
    }

    /// <summary>Lifts a wish off what it has, if it has one.</summary>
    public void Lift(int wish)
    {
        if (taken[wish] >= 0)
        {
            Count(outletUses[wish], -1);
            outletUses[wish] = 0;
            Turn(problem.Wishes[wish], problem.Wishes[wish].Options[taken[wish]], -1);
            taken[wish] = -1;
        }
    }

    private void Begin()
    {
        for (var node = 0; node < problem.Nodes.Count; node++)
        {
            for (var state = 0; state < states; state++)
            {
                Count(0, 1);
                Add(node, state, problem.Nodes[node].Others[state]);
            }
        }

        for (var one = 0; one < legs.Length; one++)
        {
            Balance(one);
        }
    }

    private void Turn(CircuitWish wish, CircuitOption option, int sign)
    {
        var group = problem.Groups[option.Group];
        free[option.Group] -= sign;
        opened += sign;
        dark -= sign * wish.Units;
        distance += sign * (long)option.Distance;
        broken -= wish.IsFixed && option.Keeps ? sign : 0;
        changed -= wish.Earlier == option.Group ? sign : 0;
        TurnCurrents(wish, option.Group, sign);
        TurnStrain(wish, group, sign);
        TurnEarth(wish.Earth, group.Supply, sign);
    }

    private void TurnCurrents(CircuitWish wish, int group, int sign)
    {
        var made = problem.Groups[group];
        for (var state = 0; state < states; state++)
        {
            over += made.Limit is { } limit ? sign * Math.Max(0L, wish.Draws[state] - limit) : 0;
            if (wish.Draws[state] != 0)
            {
                foreach (var node in carriers[group])
                {
                    Add(node, state, sign * wish.Draws[state]);
                }
            }
        }

        foreach (var one in balances[group])
        {
            Balance(one);
        }
    }

    private void TurnStrain(CircuitWish wish, CircuitGroup group, int sign)
    {
        strain += sign * CircuitStrain.On(group, wish);
        foreach (var index in group.Guards)
        {
            var guard = problem.Guards[index];
            var before = CircuitStrain.Above(guards[index], guard.Limit);
            guards[index] += sign * (guard.IsLeakage ? wish.Leakage : wish.Inrush);
            strain += CircuitStrain.Above(guards[index], guard.Limit) - before;
        }

        if (group is { Box: { } box, Limit: > 0 })
        {
            var before = Math.Max(0, boxes[box] - CircuitStrain.Bears(boxed[box]));
            boxes[box] += sign * CircuitStrain.Loading(group, wish);
            boxed[box] += sign;
            strain += Math.Max(0, boxes[box] - CircuitStrain.Bears(boxed[box])) - before;
        }
    }

    private void TurnEarth(CircuitEarth earth, int supply, int sign)
    {
        if (earth == CircuitEarth.Free)
        {
            return;
        }

        earths -= Meets(supply);
        (earth == CircuitEarth.Sound ? sound : light)[supply] += sign;
        earths += Meets(supply);
    }

    private int Meets(int supply) => sound[supply] == 0 ? 0 : light[supply] == 0 ? 1 : 2;

    private void Add(int node, int state, long current)
    {
        var cell = (node * states) + state;
        var before = currents[cell];
        currents[cell] += current;
        if (problem.Nodes[node].Limit is not { } limit)
        {
            return;
        }

        over += Math.Max(0, currents[cell] - limit) - Math.Max(0, before - limit);
        Count(uses[cell], -1);
        uses[cell] = CircuitScore.AboveComfort(currents[cell], limit);
        Count(uses[cell], 1);
    }

    private void Count(int use, int sign)
    {
        counts[Math.Min(use, Counted)] += sign;
        Heat += use > target ? sign * Math.Min((long)(use - target) * (use - target), Hottest) : 0;
        worst = Math.Max(worst, sign > 0 ? Math.Min(use, Counted) : 0);
    }

    private int Worst()
    {
        while (worst > 0 && counts[worst] == 0)
        {
            worst--;
        }

        return worst < Counted ? worst : uses.Concat(outletUses).Max();
    }

    private void Balance(int one)
    {
        var most = 0L;
        for (var state = 0; state < states; state++)
        {
            var (largest, least) = (long.MinValue, long.MaxValue);
            foreach (var leg in legs[one])
            {
                var current = currents[(leg * states) + state];
                (largest, least) = (Math.Max(largest, current), Math.Min(least, current));
            }

            most = Math.Max(most, largest - least);
        }

        spread += most - spreads[one];
        spreads[one] = most;
    }

    private int OutletUse(int wish) => problem.Groups[GroupOf(wish)].Limit is { } limit ? CircuitScore.AboveComfort(problem.Wishes[wish].Most, limit) : 0;
}
