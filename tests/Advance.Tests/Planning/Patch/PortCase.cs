using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Planning;

namespace Advance.Tests.Planning;

/// <summary>A small problem of ports: two boxes, two acts and lines for both.</summary>
internal sealed record PortCase(IReadOnlyList<PortWish> Wishes, IReadOnlyList<Port> Row, IReadOnlySet<Port> Reserved, IReadOnlySet<Port> Unbalanced)
{
    public PortField Field => new(Row, onlyByHand: [], Reserved, Unbalanced);

    /// <summary>A problem of so many ports, of which the first box has some.</summary>
    public static PortCase Of(int first, int ports, IReadOnlyList<RowOf> rows, IReadOnlyList<int> reserved, IReadOnlyList<int> unbalanced)
    {
        List<Port> row = [.. Enumerable.Range(1, ports).Select(number => PortAt(number, first))];
        return new PortCase(
            [.. rows.Select((wish, index) => Wish(wish, index, row)).DistinctBy(wish => (wish.Act, wish.First))],
            row,
            reserved.Where(number => number <= ports).Select(number => PortAt(number, first)).ToHashSet(),
            unbalanced.Where(number => number <= ports).Select(number => PortAt(number, first)).ToHashSet());
    }

    public PortTrial Trial() => new(Wishes, Row, Reserved, Unbalanced);

    public override string ToString() =>
        $"{string.Join(", ", Row)}; reserved {string.Join(", ", Reserved)}; unbalanced {string.Join(", ", Unbalanced)}\n"
        + string.Join("\n", Wishes.Select(wish => $"{wish.Address} x {wish.Count} fixed {wish.Fixed} issued {wish.Lines[0].Issued} source {wish.Source}"));

    private static Port PortAt(int number, int first) =>
        number <= first ? new Port("SB1", PortKind.Input, number) : new Port("SB2", PortKind.Input, number - first);

    private static PortWish Wish(RowOf row, int index, List<Port> ports) => new()
    {
        Act = row.Act == 0 ? null : $"Act {row.Act}",
        First = row.Channel,
        Lines = [.. Enumerable.Range(0, row.Lines).Select(line => new PortLine(Address.Of($"{row.Act}") / (row.Channel + line) / (line == 0 ? "first" : $"{index}"), Issued(row, line, ports)))],
        Fixed = row.Fixed == 0 ? null : row.Fixed > ports.Count ? new PortRange("SB2") : new PortRange(ports[row.Fixed - 1].Device, PortKind.Input, new NumberRange(ports[row.Fixed - 1].Number!.Value, ports[row.Fixed - 1].Number!.Value)),
        Source = row.Source == 0 ? "" : $"Source {row.Source}",
        NeedsBalanced = row.NeedsBalanced,
        Leads = new Dictionary<string, int>(StringComparer.Ordinal) { ["SB1"] = row.Near, ["SB2"] = row.Far },
    };

    private static Port? Issued(RowOf row, int line, List<Port> ports) =>
        row.Issued > 0 && row.Issued - 1 + line < ports.Count ? ports[row.Issued - 1 + line] : null;

    /// <summary>A row of an input list; act 0 is every act, and 0 is nothing for what is fixed, issued and shared.</summary>
    internal sealed record RowOf(int Act, int Channel, int Lines, int Source, int Fixed, int Issued, int Near, int Far, bool NeedsBalanced);
}
