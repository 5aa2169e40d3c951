using Advance.Domain.Figures;
using Advance.Planning;
using CsCheck;

namespace Advance.Tests.Planning;

/// <summary>The choice of ports against every choice there is, for small gigs.</summary>
public sealed class PortChoiceTests
{
    private const int Ports = 9;

    internal static readonly Gen<PortCase> Cases =
        from first in Gen.Int[0, Ports]
        from count in Gen.Int[1, 7]
        from reserved in Gen.Int[1, Ports].Array[0, 2]
        from unbalanced in Gen.Int[1, Ports].Array[0, 2]
        from rows in Row.Array[count]
        select PortCase.Of(first, Ports, rows, reserved, unbalanced);

    private static Gen<PortCase.RowOf> Row =>
        from act in Gen.Int[0, 2]
        from channel in Gen.Int[1, 12]
        from lines in Gen.Frequency((5, Gen.Const(1)), (2, Gen.Const(2)), (1, Gen.Const(3)))
        from source in Gen.Int[0, 3]
        from isFixed in Gen.Frequency((4, Gen.Const(0)), (1, Gen.Int[1, 10]))
        from issued in Gen.Frequency((3, Gen.Const(0)), (1, Gen.Int[1, Ports]))
        from near in Gen.Int[0, 50]
        from far in Gen.Int[0, 50]
        from needs in Gen.Bool
        select new PortCase.RowOf(act, channel, lines, source, isFixed, issued, near, far, needs);

    [Fact]
    public void No_way_is_better_than_the_one_that_is_chosen() => Cases.Sample(
        found =>
        {
            var trial = found.Trial();
            var best = trial.Best();
            if (!trial.LeavesARowOut)
            {
                Assert.Equal(best, trial.Weigh(PortChoice.Of(found.Wishes, found.Field)));
            }
        },
        iter: 200,
        print: found => found.ToString());

    [Fact]
    public void The_order_in_which_rows_come_does_not_matter() => Gen.Select(Cases, Gen.Int[0, 1000]).Sample((found, seed) =>
    {
        var shuffled = found.Wishes.OrderBy(wish => (wish.First * 7919) ^ seed).Reverse().ToList();
        Assert.Equal(Say(PortChoice.Of(found.Wishes, found.Field)), Say(PortChoice.Of(shuffled, found.Field)));
    });

    [Fact]
    public void A_row_is_parted_only_where_a_line_would_go_without_a_port() => Cases.Sample(found =>
    {
        var trial = found.Trial();
        var without = trial.Best()[2];
        var ports = PortChoice.Of(found.Wishes, found.Field);
        var lines = found.Wishes.Sum(wish => wish.Count);
        var parted = found.Wishes.Any(wish => wish.Lines.Skip(1).Where((line, index) => !IsNext(ports, wish.Lines[index], line)).Any());
        Assert.True(lines - ports.Count <= without);
        Assert.True(!parted || lines - ports.Count < without || trial.LeavesARowOut);
    });

    [Fact]
    public void A_pair_that_finds_no_two_ports_side_by_side_is_parted()
    {
        var found = PortCase.Of(4, 4, [new(1, 1, 2, 0, 0, 0, 0, 0, false)], reserved: [2, 3], unbalanced: []);
        Assert.Equal("1/1/first SB1 in 1, 1/2/0 SB1 in 4", Say(PortChoice.Of(found.Wishes, found.Field)));
    }

    [Fact]
    public void A_choice_is_not_given_up_for_the_best_of_a_few_options()
    {
        var found = PortCase.Of(
            7,
            Ports,
            [
                new(2, 2, 2, 2, 0, 0, 48, 0, false), new(0, 5, 1, 1, 10, 0, 0, 25, false), new(2, 8, 2, 3, 1, 4, 20, 6, false),
                new(1, 11, 1, 2, 6, 0, 46, 0, false), new(2, 5, 1, 3, 0, 0, 20, 13, false),
            ],
            reserved: [1, 5],
            unbalanced: []);
        var trial = found.Trial();
        Assert.Equal(trial.Best(), trial.Weigh(PortChoice.Of(found.Wishes, found.Field)));
    }

    private static bool IsNext(IReadOnlyDictionary<Address, Port> ports, PortLine one, PortLine next) =>
        !ports.TryGetValue(one.Address, out var port) || !ports.TryGetValue(next.Address, out var other)
        || (port.Device == other.Device && port.Number + 1 == other.Number);

    private static string Say(IReadOnlyDictionary<Address, Port> ports) =>
        string.Join(", ", ports.OrderBy(port => port.Key).Select(port => $"{port.Key} {port.Value}"));
}
