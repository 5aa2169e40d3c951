using Advance.Domain.Companies;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>
/// Bundles runs that share most of their way. Mains lies apart from signal. A run joins at most one loom; the run with the most others
/// beside it comes first, then the first address.
/// </summary>
internal static class Looms
{
    /// <summary>The name of the loom of each run that lies in one: that of its first run, so that it stays.</summary>
    public static IReadOnlyDictionary<Address, string> Of(IReadOnlyList<RunSketch> runs, CablePolicies policies)
    {
        var looms = new Dictionary<Address, string>();
        foreach (var alike in runs.Where(run => run.Route?.Path > policies.Near && !LiesLoose(run)).GroupBy(run => run.Link.Carries == "mains"))
        {
            Bundle([.. alike], policies, looms);
        }

        return looms;
    }

    // What somebody laid side by side on purpose, so that it stays cool, is not tied up again.
    private static bool LiesLoose(RunSketch run) =>
        run.Link.Carries == "mains" && run.Route!.Ways.Any(way => way.How is { IsKnown: true, Value: LaidHow.Apart or LaidHow.OneLayer });

    private static void Bundle(IReadOnlyList<RunSketch> runs, CablePolicies policies, Dictionary<Address, string> looms)
    {
        var beside = runs.Select((run, index) => Enumerable.Range(0, runs.Count).Where(other => other != index && LieTogether(run.Route!, runs[other].Route!, policies.LoomShare)).ToList()).ToList();
        var free = Enumerable.Range(0, runs.Count).ToHashSet();
        while (free.Count > 0)
        {
            var seed = free.Order().MaxBy(index => beside[index].Count(free.Contains));
            var loom = beside[seed].Where(free.Contains).Append(seed).Order().ToList();
            if (loom.Count < policies.LoomRuns)
            {
                return;
            }

            foreach (var index in loom)
            {
                looms[runs[index].Address] = $"loom {runs[loom[0]].Label}";
                free.Remove(index);
            }
        }
    }

    // Most pairs differ too much in length for more than the shorter of both to be shared.
    private static bool LieTogether(Route one, Route other, double share) =>
        Math.Min(one.Path.Meters, other.Path.Meters) * 100 >= share * Math.Max(one.Path.Meters, other.Path.Meters) && Share(one, other) * 100 >= share;

    // Of the longer of both, so that both share it.
    private static double Share(Route one, Route other) =>
        one.Legs.Sum(leg => other.Legs.Sum(beside => Shared(leg, beside))) / Math.Max(one.Path.Meters, other.Path.Meters);

    // How far two straight pieces lie in one line beside each other, in metres.
    private static double Shared(Leg one, Leg other)
    {
        var length = one.From.To(one.To);
        var (x, y) = ((one.To.X - one.From.X) / length, (one.To.Y - one.From.Y) / length);
        double Off(Spot spot) => Math.Abs(((spot.X - one.From.X) * y) - ((spot.Y - one.From.Y) * x));
        double On(Spot spot) => Math.Clamp(((spot.X - one.From.X) * x) + ((spot.Y - one.From.Y) * y), 0, length);
        return one.Along == other.Along && Off(other.From) < 0.01 && Off(other.To) < 0.01 ? Math.Abs(On(other.From) - On(other.To)) : 0;
    }
}
