using System.Numerics;

namespace Advance.Planning;

/// <summary>
/// The best answer as far as each choice can be priced by itself: fixed ones kept, loads fed, the last issue kept, short leads, and then the
/// first option that fits, so that there is one best answer. Limits further up are not seen. Assignment by shortest augmenting paths.
/// </summary>
internal static class CircuitMatching
{
    /// <summary>Solves it.</summary>
    public static IReadOnlyList<CircuitOption?> Solve(CircuitProblem problem)
    {
        var slots = Slots(problem);
        var prices = new CircuitPrices(problem);
        var column = Assign(problem.Wishes.Count, slots.Count, (wish, slot) => prices.Of(wish, slots[slot]), prices.Without);
        return [.. column.Select((slot, wish) => slot < slots.Count ? prices.Option(wish, slots[slot]) : null)];
    }

    // More slots than wishes are of no use.
    private static List<int> Slots(CircuitProblem problem) =>
    [
        .. problem.Groups.SelectMany((group, index) => Enumerable.Repeat(index, Math.Min(Math.Max(group.Slots, 0), problem.Wishes.Count))),
    ];

    // Column i of the columns that follow the slots stands for: wish i gets none.
    private static int[] Assign(int rows, int slots, Func<int, int, BigInteger?> price, Func<int, BigInteger> without)
    {
        var columns = slots + rows;
        var (potentials, prices) = (new BigInteger[rows + 1], new BigInteger[columns + 1]);
        var rowOf = new int[columns + 1];
        BigInteger? Price(int row, int column) =>
            column <= slots ? price(row - 1, column - 1) : column - slots == row ? without(row - 1) : null;
        for (var row = 1; row <= rows; row++)
        {
            Augment(row, columns, Price, potentials, prices, rowOf);
        }

        var answer = new int[rows];
        for (var column = 1; column <= columns; column++)
        {
            if (rowOf[column] > 0)
            {
                answer[rowOf[column] - 1] = column - 1;
            }
        }

        return answer;
    }

    // One row more: the cheapest chain of moves that makes room for it. Null is a price that nobody can pay.
    private static void Augment(
        int row, int columns, Func<int, int, BigInteger?> price, BigInteger[] potentials, BigInteger[] prices, int[] rowOf)
    {
        rowOf[0] = row;
        var least = new BigInteger?[columns + 1];
        var before = new int[columns + 1];
        var isDone = new bool[columns + 1];
        var at = 0;
        do
        {
            isDone[at] = true;
            var (from, next) = (rowOf[at], -1);
            for (var column = 1; column <= columns; column++)
            {
                if (isDone[column])
                {
                    continue;
                }

                if (price(from, column) is { } cost && cost - potentials[from] - prices[column] is var reduced && (least[column] is not { } known || reduced < known))
                {
                    (least[column], before[column]) = (reduced, at);
                }

                next = least[column] is { } own && (next < 0 || own < least[next]) ? column : next;
            }

            Shift(least[next]!.Value, columns, isDone, potentials, prices, least, rowOf);
            at = next;
        }
        while (rowOf[at] != 0);

        for (; at != 0; at = before[at])
        {
            rowOf[at] = rowOf[before[at]];
        }
    }

    private static void Shift(
        BigInteger step, int columns, bool[] isDone, BigInteger[] potentials, BigInteger[] prices, BigInteger?[] least, int[] rowOf)
    {
        for (var column = 0; column <= columns; column++)
        {
            if (isDone[column])
            {
                potentials[rowOf[column]] += step;
                prices[column] -= step;
            }
            else if (least[column] is not null)
            {
                least[column] -= step;
            }
        }
    }
}
