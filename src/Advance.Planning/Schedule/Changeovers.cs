using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Works out how long each changeover takes. Two sets of one act have none; of several stages nobody says which act is on which.</summary>
internal static class Changeovers
{
    /// <summary>Every changeover, in the order of the sets.</summary>
    public static IReadOnlyList<Changeover> Of(Gig gig, PatchPlan patch, ChangeoverTimes times)
    {
        if (gig.Stages.Count > 1)
        {
            return [];
        }

        var sets = gig.Acts.SelectMany(act => act.Sets.Where(set => set.IsKnown).Select(set => (Act: act, Set: set)))
            .OrderBy(found => found.Set.Value.Start).ToList();
        return
        [
            .. sets.Zip(sets.Skip(1)).Where(pair => pair.First.Act.Name != pair.Second.Act.Name)
                .Select(pair => Between(pair.First.Act, pair.First.Set, pair.Second.Act, pair.Second.Set, gig, patch, times)),
        ];
    }

    private static Changeover Between(Act off, Given<SetTime> last, Act on, Given<SetTime> next, Gig gig, PatchPlan patch, ChangeoverTimes times)
    {
        var doubts = Doubts.Of(last.Doubt).With(Doubts.Of(next.Doubt));
        var minutes = next.Value.Start.Minutes - last.Value.End.Minutes;
        var gap = new Figure<Duration>(Duration.FromSeconds(minutes * 60), doubts, Reason.Derived.It);
        var lines = Touched(off, on, patch);
        var allowed = Sum.Of("time it may take", "A = f / 100 · G", Publication.CommonPractice)
            .Put("f", Policy("use", times.Use.Percent))
            .Put("G", gap)
            .Gives((percent, time) => time * (percent / 100));
        return new Changeover(
            Address.Of("schedule") / "changeover" / on.Name,
            off.Name,
            on.Name,
            last.Value.End,
            gap,
            lines,
            Needed(lines, on, gig.Trucks.Count > 1 ? times.AtLeastFestival : times.AtLeast, times),
            allowed,
            next.At);
    }

    // A port keeps its line where both acts have the same source in it.
    private static int Touched(Act off, Act on, PatchPlan patch)
    {
        var before = patch.Lines.Where(line => line.Act == off.Name && line.Port is not null).ToLookup(line => line.Port!, line => line.Source);
        return patch.Lines.Count(line => line.Act == on.Name && (line.Port is not { } port || !before[port].Contains(line.Source)));
    }

    private static Figure<Duration> Needed(int lines, Act on, Duration least, ChangeoverTimes times)
    {
        var rePatch = Sum.Of("re-patching", "r = n · t / h", Publication.CommonPractice)
            .Put("n", Figure.Count(lines))
            .Put("t", Policy("re-patch", times.RePatch))
            .Put("h", Policy("patch-hands", times.PatchHands))
            .Gives((count, time, hands) => time * count / hands);
        var check = Sum.Of("checking and handing over", "k = n · c + o", Publication.CommonPractice)
            .Put("n", Figure.Count(on.Inputs.Sum(row => row.Channels.Count) + on.Mixes.Count))
            .Put("c", Policy("check", times.Check))
            .Put("o", Policy("hand-over", times.HandOver))
            .Gives((count, time, handOver) => (time * count) + handOver);
        return Sum.Of("changeover", "C = max(u, max(s, r) + k)", Publication.CommonPractice)
            .Put("u", Policy("at-least", least))
            .Put("s", Policy("strike-and-set", times.StrikeAndSet))
            .Put("r", rePatch)
            .Put("k", check)
            .Gives((floor, strike, patching, checking) => Longer(floor, Longer(strike, patching) + checking));
    }

    private static Duration Longer(Duration a, Duration b) => a > b ? a : b;

    private static Figure<T> Policy<T>(string key, T value)
        where T : struct, IComparable<T> => Figure.Policy($"changeover {key}", value);
}
