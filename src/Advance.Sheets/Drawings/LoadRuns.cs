using System.Globalization;
using Advance.Planning;
using Advance.Sheets.Views;

namespace Advance.Sheets.Drawings;

/// <summary>Finds loads along a truss that one label can stand for: fixtures numbered on from each other that weigh alike, others among them or not.</summary>
internal static class LoadRuns
{
    // So many places of other runs may come between one fixture of a run and the next.
    private const int MostBetween = 2;

    /// <summary>All of what hangs in one place each, along the truss; a place of several loads, or of another kind, is a run of its own.</summary>
    public static IReadOnlyList<LoadRun> Of(TrussPlan truss)
    {
        var places = truss.Loads.Skip(1).Where(load => load.From is not null && load.To is null)
            .GroupBy(load => load.From!.Value).OrderBy(group => group.Key).Select(group => group.ToList()).ToList();
        var found = new List<(List<IReadOnlyList<CarriedLoad>> Places, int Last)>();
        foreach (var (index, place) in places.Index())
        {
            var run = found.FindIndex(run => index - run.Last <= MostBetween + 1 && GoesOn(run.Places[^1], place));
            if (run < 0)
            {
                found.Add(([place], index));
                continue;
            }

            found[run].Places.Add(place);
            found[run] = found[run] with { Last = index };
        }

        return Tiered([.. found.Select(run => run.Places)]);
    }

    // Runs among each other come to hang lower than each other, and what is no run lower than one, so that each arrow tells its run.
    private static List<LoadRun> Tiered(List<List<IReadOnlyList<CarriedLoad>>> found)
    {
        var hasRuns = found.Exists(run => run.Count > 1);
        var tiered = new List<LoadRun>();
        foreach (var places in found)
        {
            var run = new LoadRun(places, places.Count == 1 && hasRuns ? 1 : 0);
            while (tiered.Exists(other => other.Tier == run.Tier && other.From <= run.To && run.From <= other.To))
            {
                run = run with { Tier = run.Tier + 1 };
            }

            tiered.Add(run);
        }

        return tiered;
    }

    /// <summary>A run by name: <c>Fixture 1–6</c>.</summary>
    /// <param name="run">Of two places and more.</param>
    public static string NameOf(LoadRun run)
    {
        var (name, first) = NumberedLoad.Of(run.Places[0][0])!.Value;
        var last = NumberedLoad.Of(run.Places[^1][0])!.Value.Number;
        return string.Create(CultureInfo.InvariantCulture, $"{name} {Math.Min(first, last)}–{Math.Max(first, last)}");
    }

    private static bool GoesOn(IReadOnlyList<CarriedLoad> before, IReadOnlyList<CarriedLoad> next) =>
        before is [var one] && next is [var other] && NumberedLoad.IsNeighbour(one, other);
}
