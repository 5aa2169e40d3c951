using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using Advance.Planning;
using CsCheck;

namespace Advance.Tests.Planning;

/// <summary>Against trying everything.</summary>
public sealed class LeadPickerTests
{
    private const string Source = "16 A blue";
    private const string Load = "locking mains 20 A";

    private static readonly Gen<Kind> Leads = Gen.Select(Gen.Int[0, 2], Gen.Int[1, 6], Gen.Int[0, 2], (form, metres, owned) => form switch
    {
        0 => CableGigs.Mains(metres, owned),
        1 => CableGigs.ToLocking(metres, owned),
        _ => CableGigs.LinkLead(metres, owned),
    });

    private static readonly Gen<Problem> Problems = Gen.Select(
        Leads.Array[1, 4],
        Gen.Select(Gen.Int[1, 9], Gen.Int[0, 2], Gen.Int[-3, 30]).Array[1, 3],
        (kinds, runs) => Problem.Of([.. kinds.DistinctBy(kind => kind.Id)], runs));

    [Fact]
    public void The_choice_is_as_good_as_the_best_of_all_choices() => Problems.Sample(
        problem =>
        {
            var picked = LeadPicker.Pick(problem.Wishes, problem.Ready);
            Assert.Equal(problem.Best(), LeadScore.Of(problem.Wishes.Zip(picked)));
        },
        iter: 400);

    [Fact]
    public void Nothing_is_picked_that_is_not_there_or_does_not_reach() => Problems.Sample(problem =>
    {
        var picked = LeadPicker.Pick(problem.Wishes, problem.Ready);
        Assert.All(problem.Ready, kind => Assert.True(picked.Sum(chain => chain?.Leads.Count(lead => lead.Kind.Id == kind.Key) ?? 0) <= kind.Value));
        Assert.All(problem.Wishes.Zip(picked), choice => Assert.True(choice.Second is null || choice.Second.Total >= choice.First.Needed));
    });

    [Fact]
    public void The_order_of_the_wishes_does_not_matter() => Gen.Select(Problems, Gen.Int[0, 1000]).Sample((problem, seed) =>
    {
        var shuffled = problem.Wishes.OrderBy(wish => (wish.Needed * 7919) ^ seed).ThenByDescending(wish => wish.Address).ToList();
        Assert.Equal(Said(problem.Wishes, problem.Ready), Said(shuffled, problem.Ready));
    });

    [Fact]
    public void Where_there_is_not_enough_the_run_that_has_another_way_makes_room()
    {
        // Both want the five; only the second can be made of something else.
        var problem = Problem.Of([CableGigs.ToLocking(5, 1), CableGigs.ToLocking(3, 1)], [(3, 1, -1), (5, 1, -1)]);
        Assert.Equal(["run 1: locking-3", "run 2: locking-5"], Said(problem.Wishes, problem.Ready));
        var shorter = Problem.Of([CableGigs.ToLocking(5, 1), CableGigs.ToLocking(8, 1)], [(4, 1, -1), (5, 1, -1)]);
        Assert.Equal(["run 1: locking-5", "run 2: locking-8"], Said(shorter.Wishes, shorter.Ready));
    }

    [Fact]
    public void A_run_stays_as_it_was_even_where_another_would_now_be_better_off()
    {
        var problem = Problem.Of([CableGigs.ToLocking(5, 1), CableGigs.ToLocking(8, 1)], [(4, 1, -1), (5, 1, -1)]);
        IReadOnlyList<LeadWish> wishes = [problem.Wishes[0] with { Earlier = "locking-8" }, problem.Wishes[1]];
        Assert.Equal(["run 1: locking-8", "run 2: locking-5"], Said([.. wishes.Select(Anew)], problem.Ready));
    }

    [Fact]
    public void But_not_where_that_would_leave_another_without()
    {
        var problem = Problem.Of([CableGigs.ToLocking(5, 1), CableGigs.ToLocking(8, 1)], [(4, 1, -1), (7, 1, -1)]);
        IReadOnlyList<LeadWish> wishes = [problem.Wishes[0] with { Earlier = "locking-8" }, problem.Wishes[1]];
        Assert.Equal(["run 1: locking-5", "run 2: locking-8"], Said([.. wishes.Select(Anew)], problem.Ready));
    }

    [Fact]
    public void A_lead_that_comes_with_the_unit_is_not_taken_off_the_shelf()
    {
        var problem = Problem.Of([CableGigs.ToLocking(2, 0), CableGigs.Mains(10, 1)], [(2, 1, -1), (8, 1, -1)]);
        Assert.Equal(["run 1: nothing", "run 2: nothing"], Said(problem.Wishes, problem.Ready));
        Assert.Equal(["run 1: locking-2", "run 2: mains-10 + locking-2"], Said([.. problem.Wishes.Select(wish => Anew(wish with { Own = "locking-2" }))], problem.Ready));
    }

    [Fact]
    public void A_kind_whose_number_nobody_knows_is_never_used_up()
    {
        var problem = Problem.Of([CableGigs.ToLocking(5, 0)], [(3, 1, -1), (5, 1, -1)]);
        Assert.Equal(["run 1: locking-5", "run 2: locking-5"], Said(problem.Wishes, new Dictionary<string, int>(StringComparer.Ordinal)));
    }

    // What is kept is looked up once, when a wish is made.
    private static LeadWish Anew(LeadWish wish) => new(wish.Address, wish.Chains, wish.Needed, wish.MostJoins, wish.Own, wish.Earlier);

    private static IReadOnlyList<string> Said(IReadOnlyList<LeadWish> wishes, IReadOnlyDictionary<string, int> ready) =>
        [.. wishes.Zip(LeadPicker.Pick(wishes, ready)).OrderBy(choice => choice.First.Address).Select(choice => $"{choice.First.Address}: {choice.Second?.Text ?? "nothing"}")];

    /// <summary>Runs and what is on the shelf for them.</summary>
    private sealed record Problem(IReadOnlyList<Kind> Kinds, IReadOnlyList<LeadWish> Wishes)
    {
        public Dictionary<string, int> Ready => Kinds.ToDictionary(kind => kind.Id, kind => kind.Owned.Value, StringComparer.Ordinal);

        /// <param name="kinds">On the shelf.</param>
        /// <param name="runs">Metres, joins by policy, and which of all possible chains it was made of before, if there is one of that number.</param>
        public static Problem Of(IReadOnlyList<Kind> kinds, IReadOnlyList<(int Metres, int Joins, int Before)> runs)
        {
            var stock = new Stock(kinds.ToDictionary(kind => kind.Id, StringComparer.Ordinal));
            var chains = LeadChains.Find(LeadKind.Of(stock, "mains"), "mains", LeadPlug.Read(Source), LeadPlug.Read(Load));
            return new Problem(kinds, [.. runs.Select((run, index) => new LeadWish(
                Address.Of($"run {index + 1}"), chains, run.Metres * 1000, run.Joins, Own: null, run.Before >= 0 && run.Before < chains.All.Count ? chains.All[run.Before].Text : null))]);
        }

        /// <summary>The best score of all ways to give leads to runs, with at most one lead more than the fewest or than the policy wants.</summary>
        public LeadScore Best() => Best(0, Ready, default);

        private LeadScore Best(int index, Dictionary<string, int> left, LeadScore so)
        {
            if (index == Wishes.Count)
            {
                return so;
            }

            var wish = Wishes[index];
            var reaching = Multisets(0, []).Where(leads => Reaches(leads, wish.Needed)).ToList();
            var most = Math.Max(wish.MostJoins, reaching.Select(leads => leads.Count - 1).DefaultIfEmpty(0).Min()) + 1;
            var best = Best(index + 1, left, so with { Unmade = so.Unmade + 1, Changed = so.Changed + (wish.Earlier is null ? 0 : 1) });
            foreach (var leads in reaching.Where(leads => (leads.Count - 1 <= most || IsMadeOf(wish.Earlier ?? "", leads)) && leads.GroupBy(lead => lead.Id).All(of => of.Count() <= left[of.Key])))
            {
                var taken = new Dictionary<string, int>(left, StringComparer.Ordinal);
                leads.ForEach(lead => taken[lead.Id]--);
                var score = Best(index + 1, taken, new LeadScore(
                    so.Unmade,
                    so.Changed + (wish.Earlier is { } earlier && !IsMadeOf(earlier, leads) ? 1 : 0),
                    so.TooManyJoins + Math.Max(0, leads.Count - 1 - wish.MostJoins),
                    so.Joins + leads.Count - 1,
                    so.Laid + leads.Sum(Millimetres)));
                best = score.CompareTo(best) < 0 ? score : best;
            }

            return best;
        }

        private static bool IsMadeOf(string earlier, List<Kind> leads) =>
            earlier.Split(" + ").Order(StringComparer.Ordinal).SequenceEqual(leads.Select(lead => lead.Id).Order(StringComparer.Ordinal));

        // From 16 A to locking there is one lead that turns one into the other, 16 A leads before it and locking ones after it.
        private static bool Reaches(List<Kind> leads, long needed) =>
            leads.Count(lead => lead.Id.StartsWith("locking", StringComparison.Ordinal)) == 1 && leads.Sum(Millimetres) >= needed;

        private static long Millimetres(Kind lead) => (long)lead.Cable!.Length.Value.Millimeters;

        private IEnumerable<List<Kind>> Multisets(int first, List<Kind> so)
        {
            if (so.Count > 0)
            {
                yield return so;
            }

            for (var index = first; so.Count < LeadChains.MostLeads && index < Kinds.Count; index++)
            {
                foreach (var more in Multisets(index, [.. so, Kinds[index]]))
                {
                    yield return more;
                }
            }
        }
    }
}
