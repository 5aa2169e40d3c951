using Advance.Planning;
using CsCheck;

namespace Advance.Tests.Planning.Power;

/// <summary>Small problems of circuits: one to eight wishes, one to three groups, one or two supplies, two show states.</summary>
internal static class CircuitProblems
{
    public const int States = 2;

    private static readonly Gen<int[]> Draws = Gen.Int[0, 1200].Array[States];

    private static readonly Gen<CircuitNode> Node = Gen.Select(Gen.Int[200, 4000], Gen.Int[0, 800].Array[States], Gen.Bool)
        .Select((limit, others, isKnown) => new CircuitNode(isKnown ? limit : null, others));

    /// <summary>Any of them.</summary>
    public static readonly Gen<CircuitProblem> Any = Gen.Select(Gen.Int[1, 3], Gen.Int[1, 6], Gen.Bool).SelectMany(
        (groups, wishes, isThreePhase) => Gen.Select(Group(isThreePhase).Array[groups], Node.Array[2], Wish(groups).Array[wishes])
            .Select((made, nodes, wanted) => new CircuitProblem(wanted, made, isThreePhase ? Legs(nodes) : nodes, States)));

    /// <summary>Up to six wishes and four groups behind residual-current devices and breakers, in boxes.</summary>
    public static readonly Gen<CircuitProblem> Guarded = Gen.Select(Gen.Int[1, 4], Gen.Int[1, 5]).SelectMany(
        (groups, wishes) => Gen.Select(
            Group(true).Array[groups], Node.Array[2], Wish(groups).Array[wishes], Gen.Int[50, 900].Array[10], Gen.Int[0, 400].Array[12], Gen.Int[100, 1200].Array[2])
            .Select((made, nodes, wanted, limits, burdens, guards) => new CircuitProblem(
                [.. wanted.Select((wish, index) => wish with { Leakage = burdens[index], Inrush = burdens[index + 6], IsFixed = false, Earlier = null, Earth = CircuitEarth.Free })],
                [.. made.Select((group, index) => group with { Slots = Math.Max(1, group.Slots), Leakage = limits[index], Inrush = limits[index + 4], Guards = [index % 2], Box = index / 2 })],
                Legs(nodes),
                States)
            {
                Guards = [new CircuitGuard(guards[0], IsLeakage: true), new CircuitGuard(guards[1], IsLeakage: false)],
            }));

    /// <summary>The largest that can still be tried out: eight wishes, two groups.</summary>
    public static readonly Gen<CircuitProblem> Eight = Gen.Select(Group(false).Array[2], Node.Array[2], Wish(2).Array[8])
        .Select((made, nodes, wanted) => new CircuitProblem(wanted, made, nodes, States));

    /// <summary>The best answer, found by trying them all.</summary>
    public static IReadOnlyList<CircuitOption?> TryAll(CircuitProblem problem)
    {
        CircuitOption?[]? best = null;
        foreach (var answer in Answers(problem, 0, [.. problem.Groups.Select(group => group.Slots)]))
        {
            best = best is null || Compare(problem, answer, best) < 0 ? [.. answer] : best;
        }

        return best!;
    }

    /// <summary>For each wish the place of what it got among its options.</summary>
    public static IReadOnlyList<int> Ranks(CircuitProblem problem, IReadOnlyList<CircuitOption?> answer) =>
        [.. problem.Wishes.Select((wish, index) => answer[index] is { } option ? wish.Options.ToList().IndexOf(option) : int.MaxValue)];

    private static int Compare(CircuitProblem problem, IReadOnlyList<CircuitOption?> one, IReadOnlyList<CircuitOption?> other)
    {
        var step = CircuitScore.Of(problem, one).CompareTo(CircuitScore.Of(problem, other));
        return step != 0 ? step : Ranks(problem, one).Zip(Ranks(problem, other), (own, its) => own.CompareTo(its)).FirstOrDefault(found => found != 0);
    }

    private static IEnumerable<CircuitOption?[]> Answers(CircuitProblem problem, int wish, int[] free)
    {
        if (wish == problem.Wishes.Count)
        {
            yield return new CircuitOption?[wish];
            yield break;
        }

        foreach (var option in problem.Wishes[wish].Options.Append(null))
        {
            if (option is not null && free[option.Group] == 0)
            {
                continue;
            }

            int[] left = [.. free.Select((slots, group) => group == option?.Group ? slots - 1 : slots)];
            foreach (var rest in Answers(problem, wish + 1, left))
            {
                rest[wish] = option;
                yield return rest;
            }
        }
    }

    // Of three phases each group hangs on one leg; the two nodes become three legs of one.
    private static Gen<CircuitGroup> Group(bool isThreePhase) => Gen.Select(Gen.Int[0, 4], Gen.Int[300, 1600], Gen.Int[0, 2], Gen.Int[0, 1], Gen.Bool)
        .Select((slots, limit, node, supply, isKnown) =>
            new CircuitGroup(slots, isKnown ? limit : null, isThreePhase ? [node] : node == 2 ? [0, 1] : [node], supply));

    private static IReadOnlyList<CircuitNode> Legs(CircuitNode[] nodes) => [.. new[] { nodes[0], nodes[1], nodes[0] }.Select(node => node with { Balanced = 0 })];

    private static Gen<CircuitWish> Wish(int groups) => Gen.Select(
        Gen.Int[1, 3],
        Draws,
        Gen.Enum<CircuitEarth>(),
        Gen.Select(Gen.Bool, Gen.Int[0, 30], Gen.Bool).Array[groups],
        Gen.Select(Gen.Int[0, 4], Gen.Int[0, 5])).Select((units, draws, earth, options, fixing) => Wish(units, draws, earth, options, fixing));

    private static CircuitWish Wish(int units, int[] draws, CircuitEarth earth, (bool Fits, int Distance, bool Keeps)[] options, (int Fixed, int Earlier) fixing) => new(
        units,
        draws,
        earth,
        [.. options.Select((option, group) => (option, group)).Where(one => one.option.Fits).Select(one => new CircuitOption(one.group, one.option.Distance * 100, fixing.Fixed == 0 && one.option.Keeps))],
        IsFixed: fixing.Fixed == 0,
        Earlier: fixing.Earlier < options.Length ? fixing.Earlier : null);
}
