using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using Advance.Planning;

namespace Advance.Tests.Planning;

/// <summary>A festival's leads, and fewer of them than are wanted. Effort is counted in the solver's own steps, so that no clock decides.</summary>
public sealed class LeadPickerEffortTests
{
    private const int Runs = 400;

    [Fact]
    public void Four_hundred_runs_are_proven_with_the_usual_effort()
    {
        var (wishes, ready) = Festival(share: 0.9);
        var classes = LeadClass.Of(wishes);
        var model = new LeadModel(classes, ready, LeadPicker.UsualEffort);
        var found = model.Solve();
        Assert.NotNull(found);
        Assert.True(model.IsProven);
        Assert.InRange(classes.Count, 1, 60);
        Assert.Equal(LeadScore.Of(found), LeadScore.Of(wishes.Zip(LeadPicker.Pick(wishes, ready))));
    }

    [Fact]
    public void What_is_found_in_no_time_at_all_is_still_possible()
    {
        var (wishes, ready) = Festival(share: 0.9);
        var picked = LeadPicker.Pick(wishes, ready, effort: 1e-9);
        Assert.All(ready, kind => Assert.True(picked.Sum(chain => chain?.Leads.Count(lead => lead.Kind.Id == kind.Key) ?? 0) <= kind.Value));
        Assert.True(picked.Count(chain => chain is null) < Runs / 4);
    }

    // So many of each kind as the runs would take if each had what is best for it, times the share: too few of every one.
    private static (IReadOnlyList<LeadWish> Wishes, Dictionary<string, int> Ready) Festival(double share)
    {
        Kind[] kinds =
        [
            .. new double[] { 2, 5, 10, 15, 20, 25, 50 }.Select(metres => CableGigs.Mains(metres)),
            .. new double[] { 0.5, 2, 5, 10, 20 }.Select(metres => CableGigs.ToLocking(metres)),
            .. new double[] { 1, 2, 3, 5 }.Select(metres => CableGigs.LinkLead(metres)),
        ];
        var leads = LeadKind.Of(new Stock(kinds.ToDictionary(kind => kind.Id, StringComparer.Ordinal)), "mains");
        var toUnits = LeadChains.Find(leads, "mains", LeadPlug.Read("16 A blue"), LeadPlug.Read("locking mains 20 A"));
        var onwards = LeadChains.Find(leads, "mains", LeadPlug.Read("locking mains 20 A"), LeadPlug.Read("locking mains 20 A"));
        List<LeadWish> wishes = [.. Enumerable.Range(0, Runs).Select(number => number % 2 == 0
            ? new LeadWish(Address.Of("run") / number, toUnits, 2_000 + (number * 7919 % 38_000), 1, Own: null, Earlier: null)
            : new LeadWish(Address.Of("run") / number, onwards, 800 + (number * 104_729 % 5_000), 1, Own: null, Earlier: null))];
        var wanted = wishes.SelectMany(wish => wish.Preferred!.Leads).CountBy(lead => lead.Kind.Id, StringComparer.Ordinal).ToDictionary(StringComparer.Ordinal);
        return (wishes, kinds.ToDictionary(kind => kind.Id, kind => (int)(wanted.GetValueOrDefault(kind.Id) * share), StringComparer.Ordinal));
    }
}
