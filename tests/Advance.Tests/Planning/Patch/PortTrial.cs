using Advance.Domain.Figures;
using Advance.Planning;

namespace Advance.Tests.Planning;

/// <summary>
/// Ports by trying every way there is, for a handful of rows. It weighs a way by counting on the finished patch, not by costs of single
/// options, so that it shares no line with what it checks.
/// </summary>
internal sealed class PortTrial(IReadOnlyList<PortWish> wishes, IReadOnlyList<Port> row, IReadOnlySet<Port> reserved, IReadOnlySet<Port> unbalanced)
{
    private const int Aims = 9;

    private readonly IReadOnlyList<PortWish> wishes = [.. wishes.OrderBy(wish => wish.Address)];
    private readonly int top = wishes.Max(wish => wish.First + wish.Lines.Count - 1);
    private long[] least = [];
    private int?[] best = [];

    /// <summary>The cost of the best way, by aim, and behind it the place in the row of each wish in the order of their addresses.</summary>
    public long[] Best()
    {
        least = [];
        Try(new int?[wishes.Count], 0);
        return least;
    }

    /// <summary>The same of a finished patch.</summary>
    public long[] Weigh(IReadOnlyDictionary<Address, Port> ports) =>
        Weigh([.. wishes.Select(wish => ports.TryGetValue(wish.Lines[0].Address, out var port) ? row.ToList().IndexOf(port) : (int?)null)]);

    /// <summary>Whether the best way leaves a row of several lines without ports.</summary>
    public bool LeavesARowOut => wishes.Where((wish, index) => best[index] is null && wish.Lines.Count > 1).Any();

    // More rows never cost less, so that what is dearer with some of them need not be tried with all.
    private void Try(int?[] starts, int next)
    {
        var costs = Weigh(starts[..next]);
        if (least.Length > 0 && costs.AsSpan(0, Aims).SequenceCompareTo(least.AsSpan(0, Aims)) > 0)
        {
            return;
        }

        if (next == starts.Length)
        {
            if (least.Length == 0 || costs.AsSpan().SequenceCompareTo(least) < 0)
            {
                (least, best) = (costs, [.. starts]);
            }

            return;
        }

        foreach (var start in Starts(wishes[next]).Select(start => (int?)start).Append(null))
        {
            if (Enumerable.Range(0, next).All(other => !Clash(wishes[next], start, wishes[other], starts[other])))
            {
                starts[next] = start;
                Try(starts, next + 1);
            }
        }
    }

    private IEnumerable<int> Starts(PortWish wish) => Enumerable.Range(0, Math.Max(0, row.Count - wish.Lines.Count + 1)).Where(start =>
    {
        var ports = row.Skip(start).Take(wish.Lines.Count).ToList();
        return ports.All(port => port.Device == ports[0].Device) && !ports.Exists(reserved.Contains);
    });

    private static bool Clash(PortWish one, int? start, PortWish other, int? otherStart) =>
        start is { } a && otherStart is { } b
        && (one.Act is null || other.Act is null || one.Act == other.Act)
        && Enumerable.Range(a, one.Lines.Count).Intersect(Enumerable.Range(b, other.Lines.Count)).Any();

    private long[] Weigh(int?[] starts)
    {
        var lines = wishes.Take(starts.Length).SelectMany((wish, index) => wish.Lines.Select((line, offset) => (wish, line, offset, place: starts[index] + offset))).ToList();
        var unplaced = lines.Where(line => line.place is null).ToList();
        var fixable = wishes.Where(wish => wish.Fixed is not null && Starts(wish).Any(start => IsFixedTo(wish, start))).ToHashSet();
        return
        [
            wishes.Take(starts.Length).Where((wish, index) => fixable.Contains(wish) && !(starts[index] is { } start && IsFixedTo(wish, start))).Sum(wish => wish.Lines.Count),
            unplaced.Count(line => line.wish.Act is null),
            unplaced.Count,
            wishes.Take(starts.Length).Where((wish, index) => wish.NeedsBalanced && starts[index] is { } start && row.Skip(start).Take(wish.Lines.Count).Any(unbalanced.Contains)).Sum(wish => wish.Lines.Count),
            lines.Count(line => line.line.Issued is { } issued && (line.place is null || row[line.place.Value] != issued)),
            unplaced.Sum(line => (long)top - (line.wish.First + line.offset)),
            Shared().Sum(group => Math.Max(0, group.Where(wish => wish < starts.Length).Select(wish => starts[wish]).Distinct().Count() - 1)),
            lines.Count(line => line.wish.First + line.offset <= row.Count && line.place != line.wish.First + line.offset - 1),
            lines.Where(line => line.place is not null).Sum(line => line.wish.Leads.GetValueOrDefault(row[line.place!.Value].Device)),
            .. starts.Select(start => (long)(start ?? 1000)),
        ];
    }

    private bool IsFixedTo(PortWish wish, int start) =>
        row[start].Device == wish.Fixed!.Device && (wish.Fixed.Numbers is not { } numbers || numbers.First == row[start].Number);

    private IEnumerable<List<int>> Shared()
    {
        var named = Enumerable.Range(0, wishes.Count).Where(index => wishes[index] is { Act: not null, Source.Length: > 0 }).ToList();
        var ranked = named.Select(index => (index, rank: named.Count(other =>
            wishes[other].Act == wishes[index].Act && wishes[other].Source == wishes[index].Source && wishes[other].Count == wishes[index].Count && wishes[other].First < wishes[index].First)));
        return ranked.GroupBy(one => (wishes[one.index].Source, wishes[one.index].Count, one.rank), one => one.index).Select(group => group.ToList());
    }
}
