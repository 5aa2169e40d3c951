using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Planning;
using CsCheck;

namespace Advance.Tests.Planning;

/// <summary>Minutes and hands are the shop's policy: common practice, no source.</summary>
public sealed class RotaTests
{
    private static readonly Gen<Brief> Briefs = Gen.Select(
        Gen.Int[0, 24], Gen.Int[0, 12], Gen.Int[0, 3], Gen.Int[8 * 60, 15 * 60].Array[1, 5], Gen.Int[0, 4], Gen.Int[9 * 60, 18 * 60], (decks, lines, boxes, calls, hands, hold) =>
            Of(decks, lines, boxes, calls, hands, hold));

    [Fact]
    public void Nobody_does_two_things_at_once_and_nobody_starts_before_the_call() => Briefs.Sample(brief =>
    {
        var crew = Planner.Plan(brief).Crew;
        Assert.All(crew.Workers, worker =>
        {
            var mine = crew.Tasks.Where(task => task.Who.Contains(worker.Name)).OrderBy(task => task.Start!.Value.Minutes).ToList();
            Assert.All(mine, task => Assert.True(task.Start!.Value.Minutes >= worker.Call.Minutes));
            Assert.All(mine.Zip(mine.Skip(1)), pair => Assert.True(pair.First.End!.Value.Minutes <= pair.Second.Start!.Value.Minutes));
        });
    });

    [Fact]
    public void Nothing_starts_before_what_must_be_done_before_it_and_all_is_done_once() => Briefs.Sample(brief =>
    {
        var tasks = Planner.Plan(brief).Crew.Tasks;
        var byAddress = tasks.ToDictionary(task => task.Address);
        Assert.All(tasks, task =>
        {
            Assert.NotNull(task.Start);
            Assert.All(task.After, before => Assert.True(byAddress[before].End!.Value.Minutes <= task.Start!.Value.Minutes));
        });
    });

    [Fact]
    public void Nothing_is_switched_on_before_the_hold_is_signed() => Briefs.Sample(brief =>
    {
        var tasks = Planner.Plan(brief).Crew.Tasks;
        var hold = tasks.Single(task => task.IsHold);
        Assert.True(hold.Start!.Value.Minutes >= brief.Gig.Schedule[0].Time.Value.Minutes);
        Assert.All(
            tasks.Where(task => task.Job is Job.DriveCheck or Job.LineCheck || task.What == "Test every circuit live"),
            task => Assert.True(task.Start!.Value.Minutes >= hold.End!.Value.Minutes));
    });

    [Fact]
    public void A_task_takes_its_work_shared_by_those_who_do_it() => Briefs.Sample(brief =>
        Assert.All(Planner.Plan(brief).Crew.Tasks.Where(task => !task.IsHold), task =>
        {
            Assert.True(task.Who.Count <= task.Hands);
            Assert.Equal(Math.Ceiling(task.Length.Value!.Value.Minutes - 1e-9), task.End!.Value.Minutes - task.Start!.Value.Minutes);
        }));

    // 20 decks at 3 minutes with 4 hands are 60 minutes with four, 80 with three, 240 with one.
    [Theory]
    [InlineData(1, 240)]
    [InlineData(3, 80)]
    [InlineData(4, 60)]
    [InlineData(6, 60)]
    public void Fewer_hands_take_longer_and_more_than_policy_do_not_help(int people, int minutes)
    {
        var plan = Planner.Plan(Of(20, 0, 0, [.. Enumerable.Repeat(14 * 60, people)], 0, 0));
        var deck = Assert.Single(plan.Crew.Tasks, task => task.Job == Job.Deck);
        Assert.Equal((Moment.At(14, 0), Moment.At(14, 0).Plus(minutes)), (deck.Start, deck.End));
    }

    [Fact]
    public void The_one_with_the_skill_leads()
    {
        var plan = Planner.Plan(Of(0, 4, 1, [14 * 60, 14 * 60, 14 * 60], 0, 0));
        Assert.Equal("Person 1", plan.Crew.Tasks.Single(task => task.Job == Job.DriveCheck).Who[0]);
    }

    // Person 1 comes at 16:00 and alone can check the drive; the others have built the stack long before.
    [Fact]
    public void A_task_waits_for_the_one_who_can_do_it()
    {
        var plan = Planner.Plan(Of(0, 0, 1, [14 * 60, 16 * 60, 14 * 60], 0, 0));
        var check = plan.Crew.Tasks.Single(task => task.Job == Job.DriveCheck);
        Assert.Equal((Moment.At(16, 0), "Person 1"), (check.Start, check.Who[0]));
    }

    [Fact]
    public void With_nobody_called_there_is_work_but_no_time()
    {
        var plan = Planner.Plan(Of(20, 0, 0, [], 0, 0));
        Assert.All(plan.Crew.Tasks, task => Assert.Null(task.Start));
        Assert.Null(plan.Crew.LoadInEnd);
        Assert.Equal(60, plan.Crew.Tasks.Single(task => task.Job == Job.Deck).Length.Value!.Value.Minutes, 9);
    }

    [Fact]
    public void On_several_days_nobody_says_which_the_load_in_is_on()
    {
        var brief = Of(20, 0, 0, [14 * 60], 0, 0);
        var gig = brief.Gig with { Days = [.. brief.Gig.Days, new Day("strike", brief.Gig.Days[0].Date, DayKind.Strike)] };
        Assert.All(Planner.Plan(brief with { Gig = gig }).Crew.Tasks, task => Assert.Null(task.Start));
    }

    private static Brief Of(int decks, int lines, int boxes, int[] calls, int hands, int hold)
    {
        var gig = Gigs.Gig(Gigs.Act("Band", [.. Enumerable.Range(1, lines).Select(line => Gigs.Line(line))])) with
        {
            People = [.. calls.Select((call, index) => new Person($"Person {index}", "", index == 1 ? ["sound"] : [], null, Given.Of(new Moment(call), Gigs.Here), Gigs.Here))],
            Crew = new Advance.Domain.Gigs.Crew(Given.Of(hands, Gigs.Here), null),
            Schedule = [new ScheduleRow(null, Given.Of(new Moment(hold), Gigs.Here), "power on after test", Given.Of("electrician", Gigs.Here), "", true, Gigs.Here)],
            Stages = decks == 0 ? [] : [new Stage("stage", default, default, null, new CountedItem(decks, "deck"), null, null, [], Gigs.Here)],
            Power = Advance.Domain.Gigs.Power.None with { Distributions = [new Device("PD1", Given.Of("distro", Gigs.Here), null, null, null, null, Gigs.Here)] },
            Sound = Sound.None with { Stacks = boxes == 0 ? [] : [new Stack("Main", null, default, null, [new CountedItem(boxes, "box")], null, null, Gigs.Here)] },
        };
        return Gigs.Brief(
            gig,
            Gigs.Kind("deck", 99) with { Role = Role.Deck },
            Gigs.Kind("box", 99) with { Role = Role.Loudspeaker },
            Gigs.Kind("distro", 9) with { Role = Role.Distribution, Outlets = [new OutletRow(new NumberRange(1, 6), "16 A blue", "", "C16", default, default, Gigs.Here)] });
    }
}
