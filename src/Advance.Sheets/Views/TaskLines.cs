using System.Globalization;
using Advance.Domain.Figures;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Turns tasks into lines of the load-in and the load-out sheet.</summary>
internal sealed class TaskLines
{
    private const int MostKinds = 2;

    private readonly Plan plan;
    private readonly Cells cells;
    private readonly ILookup<Job, (TravellingUnit Unit, int Place)> units;
    private const int MostNeeds = 4;

    private readonly Dictionary<Address, string> names;

    public TaskLines(Plan plan, Cells cells)
    {
        this.plan = plan;
        this.cells = cells;
        units = plan.Load.InOrder.Select((row, index) => (row.For, Unit: row.Unit, Place: index + 1)).ToLookup(row => row.For, row => (row.Unit, row.Place));
        names = plan.Crew.Tasks.ToDictionary(task => task.Address, NameOf);
    }

    /// <summary>A task of the load-in.</summary>
    public CrewWorkView.TaskLine In(CrewTask task) => Line(task, task.What) with
    {
        Time = Cell.Of(task.Start?.ToString() ?? "") with { Strong = true },
        Until = Cell.Of(task.End?.ToString() ?? ""),
        Needs = Cell.Of(Few([.. Needed(task).Select(address => names[address])])),
        Cases = task.Job == Job.Unload ? Cell.Of("all of it") : CasesOf(task),
        Position = task.Job == Job.Unload || !IsCarried(task) ? Cell.Blank : Cell.Of(PlacesOf(task)),
    };

    // A task that comes after all others need not name each of them.
    private static string Few(IReadOnlyList<string> needed) => needed.Count <= MostNeeds
        ? string.Join("; ", needed)
        : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{string.Join("; ", needed.Take(MostNeeds - 1))}; and {needed.Count - MostNeeds + 1} more");

    /// <summary>What is done instead on the way out.</summary>
    public CrewWorkView.TaskLine Out(CrewTask task) => Line(task, task.Undo) with
    {
        Cases = task.Job == Job.Unload ? Cell.Of("what is left") : CasesOf(task),
        Position = task.IsHold ? Cell.Blank : Cell.Of(PlacesOf(task)),
    };

    /// <summary><c>52 kg Sub 18 in: 4 hands</c>.</summary>
    public static Cell LiftOf(Lift lift, Plan plan, Cells cells)
    {
        var kind = plan.Brief.Stock.Find(lift.Item);
        var weight = cells.WithUnit(lift.Weight);
        var by = lift.Hands is { } hands ? hands == 1 ? "one lifts" : string.Create(CultureInfo.InvariantCulture, $"{hands} lift") : "forks or wheels";
        return weight with { Text = $"{weight.Text} {CaseWords.Short(kind, lift.Item)}: {by}" };
    }

    private CrewWorkView.TaskLine Line(CrewTask task, string what) => new(
        Cell.Blank,
        Cell.Blank,
        Cell.Of(task.Area),
        Cell.Of(what) with { Strong = true },
        HandsOf(task),
        Cell.Of(string.Join(", ", task.Who)) with { Tbc = cells.NoteOf(task.IsHold ? task.RestsOn : Domain.Facts.Doubts.None) },
        Cell.Blank,
        Cell.Blank,
        Cell.Blank,
        IsCarried(task) && task.Lift is { } lift ? LiftOf(lift, plan, cells) : Cell.Blank,
        task.Danger,
        task.IsHold);

    private static Cell HandsOf(CrewTask task) => task.IsHold ? Cell.Blank
        : Cell.Of(string.Create(CultureInfo.InvariantCulture, $"{task.Hands}{(task.Skill.Length == 0 ? "" : task.Hands == 1 ? $" × {task.Skill}" : $", lead: {task.Skill}")}"));

    // What is needed by something else that is needed needs no word of its own.
    private IEnumerable<Address> Needed(CrewTask task)
    {
        var behind = task.After.SelectMany(Behind).ToHashSet();
        return task.After.Where(address => names.ContainsKey(address) && !behind.Contains(address));
    }

    private IEnumerable<Address> Behind(Address address) => plan.Crew.Tasks.Where(task => task.Address == address)
        .SelectMany(task => task.After)
        .SelectMany(before => Behind(before).Prepend(before));

    // What only looks at what others carried in takes nothing out of the vehicle.
    private static bool IsCarried(CrewTask task) => task is { IsHold: false, Undo.Length: > 0 };

    private Cell CasesOf(CrewTask task) => !IsCarried(task) ? Cell.Blank : Cell.Of(CaseWords.Few(units[task.Job].Select(found => found.Unit), MostKinds));

    private string PlacesOf(CrewTask task)
    {
        var places = units[task.Job].Select(found => found.Place).ToList();
        return places.Count == 0 ? "" : places.Count == 1
            ? string.Create(CultureInfo.InvariantCulture, $"{places[0]}")
            : string.Create(CultureInfo.InvariantCulture, $"{places.Min()}–{places.Max()}");
    }

    private static string NameOf(CrewTask task) => task.IsHold ? $"HOLD {task.What}" : task.What.Split(',')[0];
}
