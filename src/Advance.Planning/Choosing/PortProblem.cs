namespace Advance.Planning;

/// <summary>Wishes for ports and every way to serve each: what the greedy choice, the search and the model have in common.</summary>
internal sealed class PortProblem
{
    private readonly PortField ports;
    private readonly int top;

    private PortProblem(IEnumerable<PortUnit> units, PortField field, bool areApart)
    {
        ports = field;
        Units = [.. units.OrderBy(unit => unit.Wishes[0].Address)];
        top = Units.SelectMany(unit => unit.Wishes).Select(wish => wish.First + wish.Count - 1).DefaultIfEmpty().Max();
        Options = [.. Units.Select(OptionsOf)];
        Acts = [.. Units.SelectMany(unit => unit.Wishes).Select(wish => wish.Act).Distinct().Order(StringComparer.Ordinal)];
        Shared = areApart ? [.. SharedSources([.. Units.Select(unit => unit.Wishes[0])]).Where(group => group.Count > 1)] : [];
    }

    /// <summary>In the order of their addresses.</summary>
    public IReadOnlyList<PortUnit> Units { get; }

    /// <summary>By unit, in the order of the row; going without comes last.</summary>
    public IReadOnlyList<IReadOnlyList<PortOption>> Options { get; }

    /// <summary>In the order of their names; null, for what is up all day, comes first.</summary>
    public IReadOnlyList<string?> Acts { get; }

    /// <summary>Units, by number, that are one source for several acts: at most one an act. None where such units have been made one.</summary>
    public IReadOnlyList<IReadOnlyList<int>> Shared { get; }

    /// <summary>How many ports are not reserved.</summary>
    public int FreePorts => Enumerable.Range(0, ports.Count).Count(port => ports.IsFree(port, 1));

    /// <summary>A problem where each row is served for itself. The order in which the wishes come does not matter.</summary>
    public static PortProblem Of(IEnumerable<PortWish> wishes, PortField field) => new(wishes.Select(wish => new PortUnit([wish])), field, areApart: true);

    /// <summary>The same problem where a source that acts share has one port for all of them.</summary>
    public PortProblem Together()
    {
        var apart = Enumerable.Range(0, Units.Count).Except(Shared.SelectMany(group => group)).Select(unit => Units[unit]);
        var together = Shared.Select(group => new PortUnit([.. group.Select(unit => Units[unit].Wishes[0])]));
        return new PortProblem(apart.Concat(together), ports, areApart: false);
    }

    /// <summary>Whether two options cannot be chosen together.</summary>
    public bool Clash(int one, PortOption option, int other, PortOption otherOption) =>
        option.Overlaps(Units[one].Count, otherOption, Units[other].Count) && Units[one].IsUpWith(Units[other]);

    /// <summary>The ports that an option takes from each act that the unit is up for.</summary>
    public IEnumerable<(string? Act, int Port)> Uses(int unit, PortOption option) =>
        option.HasPort
            ? Acts.Where(Units[unit].IsUpFor).SelectMany(act => Enumerable.Range(option.Start, Units[unit].Count).Select(port => (act, port)))
            : [];

    /// <summary>What a choice costs, by aim.</summary>
    public long[] Weigh(IReadOnlyList<PortOption> chosen)
    {
        var costs = new long[PortOption.Aims];
        foreach (var option in chosen)
        {
            for (var aim = 0; aim < costs.Length; aim++)
            {
                costs[aim] += option.Costs[aim];
            }
        }

        costs[(int)PortAim.Moved] = Shared.Sum(group => group.Select(unit => chosen[unit].Start).Distinct().Count() - 1);
        return costs;
    }

    // Two rows of one name in one act are the first and the second of that name, in every act.
    private static IEnumerable<IReadOnlyList<int>> SharedSources(List<PortWish> wishes) =>
        Enumerable.Range(0, wishes.Count)
            .Where(index => wishes[index] is { Act: not null, Source.Length: > 0 })
            .GroupBy(index => (wishes[index].Act, wishes[index].Source, wishes[index].Count))
            .SelectMany(ofName => ofName.OrderBy(index => wishes[index].First).Select((index, rank) => (Key: (ofName.Key.Source, ofName.Key.Count, rank), index)))
            .GroupBy(found => found.Key, found => found.index)
            .Select(group => group.Order().ToList());

    private List<PortOption> OptionsOf(PortUnit unit)
    {
        var starts = Enumerable.Range(0, ports.Count)
            .Where(start => ports.IsFree(start, unit.Count) && (start < ports.Straight || unit.Wishes.All(wish => wish.IsAsFixed(ports[start]))))
            .ToList();
        var obeyable = unit.Wishes.Where(wish => starts.Exists(start => wish.IsAsFixed(ports[start]))).ToHashSet();
        var options = starts.ConvertAll(start => new PortOption(start, Sum(unit, wish => CostsAt(wish, start, obeyable.Contains(wish)))));
        options.Add(new PortOption(PortOption.None, Sum(unit, wish => CostsWithout(wish, obeyable.Contains(wish)))));
        return options;
    }

    private static long[] Sum(PortUnit unit, Func<PortWish, long[]> costs) =>
        unit.Wishes.Select(costs).Aggregate((one, other) => [.. one.Zip(other, (a, b) => a + b)]);

    private long[] CostsAt(PortWish wish, int start, bool canBeObeyed)
    {
        var costs = new long[PortOption.Aims];
        costs[(int)PortAim.GivenUp] = canBeObeyed && !wish.IsAsFixed(ports[start]) ? wish.Count : 0;
        costs[(int)PortAim.Unfit] = wish.NeedsBalanced && ports.IsUnbalanced(start, wish.Count) ? wish.Count : 0;
        costs[(int)PortAim.Changed] = Enumerable.Range(0, wish.Count).Count(index => wish.Lines[index].Issued is { } issued && issued != ports[start + index]);
        costs[(int)PortAim.Crooked] = start == wish.First - 1 ? 0 : OwnPorts(wish);
        costs[(int)PortAim.Lead] = (long)wish.Count * wish.Leads.GetValueOrDefault(ports[start].Device);
        return costs;
    }

    private long[] CostsWithout(PortWish wish, bool canBeObeyed)
    {
        var costs = new long[PortOption.Aims];
        costs[(int)PortAim.GivenUp] = canBeObeyed ? wish.Count : 0;
        costs[(int)PortAim.AllDayWithout] = wish.Act is null ? wish.Count : 0;
        costs[(int)PortAim.Without] = wish.Count;
        costs[(int)PortAim.Changed] = wish.Lines.Count(line => line.Issued is not null);
        costs[(int)PortAim.LowWithout] = Enumerable.Range(wish.First, wish.Count).Sum(channel => (long)top - channel);
        costs[(int)PortAim.Crooked] = OwnPorts(wish);
        return costs;
    }

    // How many of its lines have a port of their own number at all.
    private int OwnPorts(PortWish wish) => Math.Clamp(ports.Straight - wish.First + 1, 0, wish.Count);
}
