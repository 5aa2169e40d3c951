using Advance.Domain.Wording;
using UnitsNet;

namespace Advance.Planning;

/// <summary>How the hoists stand when forces are worked out: which is high, which low, which is gone, and whether chains and points give.</summary>
public sealed record LiftCase
{
    private LiftCase(IReadOnlyList<double> offsets, int? gone, bool isSoft) => (Offsets, Gone, IsSoft) = (offsets, gone, isSoft);

    /// <summary>How much higher each hook stands than level, m; negative where it is lower.</summary>
    public IReadOnlyList<double> Offsets { get; }

    /// <summary>The hoist that is gone, from 0; null where all are there.</summary>
    public int? Gone { get; }

    /// <summary>Whether slings, chains and points give.</summary>
    public bool IsSoft { get; }

    /// <summary>The two hoists that carry all, where a case is the bound of any unevenness; null elsewhere.</summary>
    public (int First, int Second)? Pair { get; private init; }

    /// <summary>In words, hoists counted from 1: <c>hoists 1, 3 high and 2, 4 low by 20 mm, points give</c>.</summary>
    public string Name => Said.ToString();

    /// <summary>The same, in the units that it is said in.</summary>
    public Words Said => IsSoft ? Words.Of($"{How}, points give") : How;

    private Words How => (Pair, Gone) switch
    {
        ({ } pair, _) => pair.First == pair.Second ? $"all on hoist {pair.First + 1}" : $"all on hoists {pair.First + 1} and {pair.Second + 1}",
        (_, { } gone) => $"hoist {gone + 1} gone",
        _ => Offsets.All(offset => offset == 0) ? "level" : Uneven(),
    };

    /// <summary>All level.</summary>
    public static LiftCase Level(int hoists, bool isSoft) => new(new double[hoists], null, isSoft);

    /// <summary>Hooks high or low.</summary>
    public static LiftCase Of(IReadOnlyList<double> offsets, bool isSoft) => new(offsets, null, isSoft);

    /// <summary>One hoist gone, the others level.</summary>
    public static LiftCase Without(int gone, int hoists, bool isSoft) => new(new double[hoists], gone, isSoft);

    /// <summary>Two hoists carry all.</summary>
    public static LiftCase On(int first, int second, int hoists) => new(new double[hoists], null, isSoft: false) { Pair = (first, second) };

    private Words Uneven()
    {
        var parts = new[] { Part(offset => offset > 0, "high"), Part(offset => offset < 0, "low") }.Where(part => part.Length > 0);
        return $"{string.Join(" and ", parts)} by {new FineLength(Length.FromMeters(Offsets.Max(Math.Abs)))}";
    }

    private string Part(Func<double, bool> which, string how)
    {
        var hoists = Enumerable.Range(0, Offsets.Count).Where(hoist => which(Offsets[hoist])).ToList();
        return hoists.Count == 0 ? "" : $"{(hoists.Count == 1 ? "hoist" : "hoists")} {string.Join(", ", hoists.Select(hoist => $"{hoist + 1}"))} {how}";
    }
}
