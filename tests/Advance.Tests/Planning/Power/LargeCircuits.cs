using Advance.Planning;

namespace Advance.Tests.Planning.Power;

/// <summary>
/// A large open-air show, made up: loads of 0.1 to 12 A on twelve three-phase distributions, these on supplies of 125 A. The same seed makes
/// the same show.
/// </summary>
internal sealed class LargeCircuits
{
    private const int Service = 12_500;
    private const int BoxesOfService = 2;

    private readonly List<CircuitNode> nodes = [];
    private readonly List<CircuitGroup> groups = [];
    private readonly List<CircuitGuard> guards = [];
    private readonly List<(int X, int Y)> spots = [];
    private ulong seed;

    private LargeCircuits(ulong seed) => this.seed = seed;

    /// <summary>The problem.</summary>
    /// <param name="seed">Which show.</param>
    /// <param name="loads">How many loads there are.</param>
    /// <param name="boxes">How many distributions there are.</param>
    public static CircuitProblem Of(ulong seed, int loads = 500, int boxes = 12) => new LargeCircuits(seed).Make(loads, boxes);

    private CircuitProblem Make(int loads, int boxes)
    {
        for (var box = 0; box < boxes; box++)
        {
            AddBox(box, loads, boxes);
        }

        var wishes = Enumerable.Range(0, loads).Select(_ => Wish()).ToList();
        return new CircuitProblem(wishes, groups, nodes, 5) { Guards = guards };
    }

    private void AddBox(int box, int loads, int boxes)
    {
        var service = box / BoxesOfService;
        if (box % BoxesOfService == 0)
        {
            Legs(Service, Next(0, 400));
            guards.Add(new CircuitGuard(9000, IsLeakage: true));
        }

        var first = service * (3 + (BoxesOfService * 3));
        int[] rated = [3200, 6300, 6300];
        Legs(rated[Next(0, 3)], 0);
        var inlet = nodes.Count - 3;
        spots.Add((Next(0, 6000), Next(0, 3000)));

        // 12 to 48 single-phase outlets, and one and a half times as many in all as there are loads.
        var outlets = Math.Clamp((3 * loads / (2 * boxes)) + Next(-14, 15), 12, 48) / 3;
        for (var leg = 0; leg < 3; leg++)
        {
            Group(outlets - 1, 1600, [first + leg, inlet + leg], service, box);
            Group(1, 3200, [first + leg, inlet + leg], service, box);
        }

        Group(2, 3200, [first, first + 1, first + 2, inlet, inlet + 1, inlet + 2], service, box);
        Group(2, 1600, [first, first + 1, inlet, inlet + 1], service, box);
    }

    private void Legs(int limit, int others)
    {
        var first = nodes.Count;
        for (var leg = 0; leg < 3; leg++)
        {
            nodes.Add(new CircuitNode(limit, [.. Enumerable.Repeat(others, 5)], first));
        }
    }

    private void Group(int slots, int limit, int[] path, int service, int box) => groups.Add(new CircuitGroup(slots, limit, path, service)
    {
        Leakage = 900,
        Inrush = limit * 7,
        Guards = [service],
        Box = box,
    });

    private CircuitWish Wish()
    {
        var kind = Next(0, 100);
        var legs = kind < 3 ? 3 : kind < 5 ? 2 : 1;
        var draw = Next(0, 100) switch
        {
            < 40 => Next(10, 100),
            < 75 => Next(100, 400),
            < 92 => Next(400, 800),
            _ => Next(800, 1201),
        };
        var earth = (CircuitEarth)(kind % 3);
        var (x, y) = (Next(0, 6000), Next(0, 3000));
        var isFixed = Next(0, 100) < 4;
        var fixedOn = Next(0, spots.Count);
        var options = groups
            .Select((group, index) => (group, index))
            .Where(one => Ways(one.group) == legs && (legs > 1 || one.group.Limit == 1600 || draw > 800))
            .Select(one => new CircuitOption(one.index, Math.Abs(spots[one.group.Box!.Value].X - x) + Math.Abs(spots[one.group.Box!.Value].Y - y), isFixed && one.group.Box == fixedOn))
            .ToList();
        isFixed = isFixed && legs == 1 && earth == CircuitEarth.Free;
        return new CircuitWish(1, Shares(draw, earth), earth, isFixed ? options : [.. options.Select(option => option with { Keeps = false })], isFixed)
        {
            Leakage = Next(5, 60),
            Inrush = draw * Next(2, 6),
        };
    }

    private static int Ways(CircuitGroup group) => group.Nodes.Count / 2;

    // Show, sound check, changeover, build, night.
    private static int[] Shares(int draw, CircuitEarth earth) => earth switch
    {
        CircuitEarth.Sound => [draw, draw, draw / 3, draw / 3, draw / 4],
        CircuitEarth.Light => [draw, draw / 2, draw / 2, draw, draw / 5],
        _ => [draw, draw, draw, draw / 2, draw],
    };

    // A congruential generator (Knuth's MMIX numbers): the same everywhere.
    private int Next(int from, int below)
    {
        seed = unchecked((seed * 6364136223846793005UL) + 1442695040888963407UL);
        return from + (int)((seed >> 33) % (ulong)(below - from));
    }
}
