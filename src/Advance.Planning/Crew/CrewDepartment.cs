using Advance.Domain;
using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Puts the work in order and on the people who are called.</summary>
public static class CrewDepartment
{
    /// <summary>Settles who does what when, from everything that was chosen.</summary>
    /// <param name="brief">As written.</param>
    /// <param name="backbone">Every piece.</param>
    /// <param name="sound">The stacks.</param>
    /// <param name="patch">The lines.</param>
    /// <param name="pull">What comes in the vehicles.</param>
    public static CrewPlan Settle(Brief brief, Backbone backbone, SoundPlan sound, PatchPlan patch, StockPlan pull)
    {
        var gig = brief.Gig;
        var policies = brief.Company.Policies;
        var drafts = LoadIn.Tasks(brief, backbone, sound, patch, pull);
        var called = Workers.Called(gig);

        // Nobody says on which of several days the load-in is.
        var workers = gig.Days.Count > 1 ? [] : Workers.Of(gig);
        var turns = Rota.Of(drafts, workers);
        var jobs = Jobs.ByItem(backbone.Pieces);
        var loose = Loose(pull, policies).ToLookup(thing => jobs.GetValueOrDefault(thing.Item, Job.None));
        var lifts = Lifts(loose, pull, policies.Lifts);
        var doubts = drafts.Aggregate(Workers.Doubts(gig), (sum, draft) => sum.With(draft.RestsOn).With(draft.Work.RestsOn));
        var tasks = drafts.Select(draft => TaskOf(draft, turns.GetValueOrDefault(draft), LiftOf(draft, drafts, lifts, loose, policies.Lifts), doubts)).ToList();
        var loadOut = LoadOuts.Of(brief, drafts, workers.Count);
        var changeovers = Changeovers.Of(gig, patch, policies.Changeover);
        return new CrewPlan([.. tasks.OrderBy(task => task.Start ?? new Moment(int.MaxValue))], Figures(tasks, called, loadOut, changeovers))
        {
            Workers = workers,
            Called = called,
            LoadInEnd = EndOf(tasks),
            LoadOut = loadOut,
            HeaviestLift = Lift.Heaviest(PeopleLift(pull, policies), policies.Lifts),
            Changeovers = changeovers,
            RestsOn = doubts,
        };
    }

    // Who is free for a task hangs on all tasks before it, and so on every question about them.
    private static CrewTask TaskOf(TaskDraft draft, Turn? turn, Lift? lift, Doubts all)
    {
        var hands = draft.By is not null || turn is null ? Math.Max(1, draft.Hands) : turn.Who.Count;
        return new CrewTask(
            draft.Address, draft.What, draft.Area, turn?.Start, turn?.End, draft.Hands, draft.Skill, draft.After, draft.IsHold, draft.RestsOn.With(draft.Work.RestsOn))
        {
            Job = draft.Job,
            Length = draft.IsHold ? draft.Work : Labour.Shared(draft.Work, new Figure<int>(hands, all, Reason.Derived.It)),
            Who = turn?.Who ?? (draft.By is { Length: > 0 } by ? [by] : []),
            Lift = lift,
            Danger = draft.Danger,
            Undo = draft.Undo,
        };
    }

    // What another task of the same job lifts is no matter of this one: a front fill does not take the hands of a sub.
    private static Lift? LiftOf(
        TaskDraft draft, IReadOnlyList<TaskDraft> all, IReadOnlyDictionary<Job, Lift> lifts, ILookup<Job, (string Item, Figure<Mass> Weight)> loose, LiftLimits limits)
    {
        var others = all.Where(other => other.Job == draft.Job).SelectMany(other => other.Lifted).Except(draft.Lifted, StringComparer.Ordinal).ToHashSet(StringComparer.Ordinal);
        return others.Count == 0 ? lifts.GetValueOrDefault(draft.Job) : Lift.Heaviest(loose[draft.Job].Where(thing => !others.Contains(thing.Item)), limits);
    }

    // Of the load-in itself; checking lines is what it must be done for.
    private static Moment? EndOf(IReadOnlyList<CrewTask> tasks)
    {
        var needed = tasks.Where(task => task.Job != Job.LineCheck && !task.IsHold).ToList();
        return needed.Count == 0 || needed.Exists(task => task.End is null) ? null : needed.Max(task => task.End);
    }

    private static Dictionary<Job, Lift> Lifts(ILookup<Job, (string Item, Figure<Mass> Weight)> loose, StockPlan pull, LiftLimits limits)
    {
        var lifts = loose.Select(group => (Job: group.Key, Lift: Lift.Heaviest(group, limits)))
            .Where(found => found.Lift is not null)
            .ToDictionary(found => found.Job, found => found.Lift!);
        if (Lift.Heaviest(pull.Units.Select(unit => (unit.Item, unit.Gross)), limits) is { } heaviest)
        {
            lifts[Job.Unload] = heaviest;
        }

        return lifts;
    }

    private static IEnumerable<(string Item, Figure<Mass> Weight)> Loose(StockPlan pull, Policies policies) =>
        pull.Lines.Where(line => line.Kind is { Role: not (Role.Case or Role.Truck) })
            .Select(line => (line.Item, Weights.OfOne(line.Item, line.Kind, policies.WeightMargin)));

    // What is heavier than four can lift goes on wheels, whoever is there.
    private static IEnumerable<(string Item, Figure<Mass> Weight)> PeopleLift(StockPlan pull, Policies policies) =>
        Loose(pull, policies).Where(thing => thing.Weight.Value <= policies.Lifts.Four);

    private static IReadOnlyList<Stated> Figures(
        IReadOnlyList<CrewTask> tasks, Figure<int> called, LoadOut? loadOut, IReadOnlyList<Changeover> changeovers) =>
    [
        Stated.Of(Address.Of("crew") / "called", "people called", called),
        .. tasks.Where(task => !task.IsHold).Select(task => Stated.Of(task.Address / "time", $"{task.What}, time", task.Length)),
        .. loadOut is null ? Array.Empty<Stated>() : [Stated.Of(Address.Of("crew") / "load-out" / "time", "load-out, time", loadOut.Length)],
        .. changeovers.SelectMany(changeover => changeover.Figures),
    ];
}
