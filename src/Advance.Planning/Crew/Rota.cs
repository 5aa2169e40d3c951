using Advance.Domain.Facts;
using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>
/// Gives tasks to people: whenever somebody is free, the first task of the list that may start and has at least half of its hands gets up to
/// all of them. Fewer hands take longer. Where anybody called has the skill that a task asks for, one of them leads it; else the first as written.
/// </summary>
internal sealed class Rota
{
    private readonly IReadOnlyList<TaskDraft> tasks;
    private readonly IReadOnlyList<Worker> workers;
    private readonly Dictionary<Worker, int> freeFrom = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<TaskDraft, Turn> turns = new(ReferenceEqualityComparer.Instance);

    private Rota(IReadOnlyList<TaskDraft> tasks, IReadOnlyList<Worker> workers)
    {
        this.tasks = tasks;
        this.workers = workers;
        foreach (var worker in workers)
        {
            freeFrom[worker] = worker.Call.Minutes;
        }
    }

    /// <summary>The turn of every task that can be timed: not those that take nobody knows how long, nor what comes after them.</summary>
    public static IReadOnlyDictionary<TaskDraft, Turn> Of(IReadOnlyList<TaskDraft> tasks, IReadOnlyList<Worker> workers)
    {
        var rota = new Rota(tasks, workers);
        if (workers.Count > 0)
        {
            rota.Run();
        }

        return rota.turns;
    }

    private void Run()
    {
        int? now = workers.Min(worker => worker.Call.Minutes);
        while (now is { } moment)
        {
            while (tasks.Any(task => !turns.ContainsKey(task) && TryStart(task, moment)))
            {
                // A hold that is signed lets others start at the same moment.
            }

            now = NextAfter(moment);
        }
    }

    private int? NextAfter(int moment)
    {
        var moments = freeFrom.Values.Concat(turns.Values.Select(turn => turn.End.Minutes))
            .Concat(tasks.Where(task => !turns.ContainsKey(task)).Select(task => task.NotBefore?.Minutes ?? 0))
            .Where(other => other > moment).ToList();
        return moments.Count == 0 ? null : moments.Min();
    }

    private bool TryStart(TaskDraft task, int moment)
    {
        if (task.Work.Value is not { } work || task.NotBefore?.Minutes > moment || !task.After.All(address => IsDone(address, moment)))
        {
            return false;
        }

        if (task.By is { } other)
        {
            Take(task, moment, work.Minutes / Math.Max(1, task.Hands), []);
            turns[task] = turns[task] with { Who = other.Length == 0 ? [] : [other] };
            return true;
        }

        var free = workers.Where(worker => freeFrom[worker] <= moment).OrderBy(worker => Has(worker, task.Skill) ? 0 : 1).Take(task.Hands).ToList();
        var lacksLead = workers.Any(worker => Has(worker, task.Skill)) && !free.Exists(worker => Has(worker, task.Skill));
        if (lacksLead || free.Count < Math.Min((task.Hands + 1) / 2, workers.Count))
        {
            return false;
        }

        Take(task, moment, work.Minutes / free.Count, free);
        return true;
    }

    private static bool Has(Worker worker, string skill) => worker.Skills.Contains(skill, StringComparer.OrdinalIgnoreCase);

    private bool IsDone(Address address, int moment) =>
        tasks.FirstOrDefault(task => task.Address == address) is { } before && turns.TryGetValue(before, out var turn) && turn.End.Minutes <= moment;

    private void Take(TaskDraft task, int moment, double minutes, IReadOnlyList<Worker> people)
    {
        var end = moment + (int)Math.Ceiling(minutes - 1e-9);
        turns[task] = new Turn(new Moment(moment), new Moment(end), [.. people.Select(worker => worker.Name)]);
        foreach (var worker in people)
        {
            freeFrom[worker] = end;
        }
    }
}
