using Advance.Domain.Wording;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the sheet of workings.</summary>
internal static class WorkingsViews
{
    private const int OneLine = 60;

    // What a life, a fuse or a back may hang on. Counts of the shop and lengths of leads are explained on request.
    private static readonly string[] Subjects = ["power", "rigging", "stack", "stage", "truck"];

    // The load of a vehicle and its parts; what a department pulls is no safety figure.
    private const string Load = "load";

    /// <summary>Null where nothing was worked out.</summary>
    public static WorkingsView? Of(Plan plan)
    {
        var cells = new Cells(plan);
        var figures = plan.Figures.Where(stated => stated.How is not null && IsSafety(stated.Address.Text.Split('/'))).ToList();
        var inputs = new WorkingInputs(cells, figures);
        var groups = figures
            .GroupBy(stated => (Kind: Kind(stated), stated.How!.Formula, Source: stated.How.Source.ToString()))
            .Select(group => GroupOf(group.Key, [.. group], cells, inputs))
            .ToList();
        return groups.Count > 0 ? new WorkingsView([.. WorkingRows.Merged(groups)]) { IsMetric = plan.Brief.Company.Units == Domain.Wording.UnitSystem.Metric } : null;
    }

    private static bool IsSafety(string[] path) => Subjects.Contains(path[0], StringComparer.Ordinal) || (path[0] == Load && path is not [_, "department" or "pieces", ..]);

    // "PD1 outlet 1, current in use, worst in show": what of, what, and a remark.
    private static string Kind(Stated stated) => DaySheetViews.Capital(IsOfOne(stated) ? stated.What.Split(", ")[1] : stated.What);

    // What the figure is of comes first; a figure of the gig as a whole has no such part.
    private static bool IsOfOne(Stated stated) => stated.Address.Text.Count(letter => letter == '/') > 1 && stated.What.Contains(", ", StringComparison.Ordinal);

    private static WorkingsView.Group GroupOf((string Kind, string Formula, string Source) key, List<Stated> figures, Cells cells, WorkingInputs inputs)
    {
        var shared = SharedAddress.Of([.. figures.Select(stated => stated.Address.Text)]);
        var remarks = figures.ConvertAll(Remarks);
        var alike = figures.Count < 2 ? 0 : Enumerable.Range(0, remarks.Min(some => some.Length)).TakeWhile(at => remarks.TrueForAll(some => some[at] == remarks[0][at])).Count();
        var rows = WorkingRows.Folded([.. figures.Zip(remarks, (stated, some) => LineOf(stated, string.Join(", ", some.Skip(alike)), shared, cells, inputs))]);
        var inEach = WorkingRows.InEach(rows);
        string[] symbols = [FormulaWords.Of(key.Formula), .. inputs.Behind(figures)];
        return new WorkingsView.Group(
            Cell.Of(string.Join(", ", [key.Kind, .. remarks[0][..alike]])),
            Cell.Of(key.Formula),
            Cell.Of(string.Join("; ", symbols.Where(words => words.Length > 0))),
            Cell.Of(key.Source),
            Likened(WorkingRows.Without(inEach, rows)))
        {
            InEach = inEach,
            SharedAddress = Cell.Of(shared.Text),
        };
    }

    private static string[] Remarks(Stated stated) => IsOfOne(stated) ? stated.What.Split(", ")[2..] : [];

    // What takes more than a line to put in is told once for all that are open alike.
    private static List<WorkingsView.Line> Likened(List<WorkingsView.Line> lines)
    {
        var first = new Dictionary<string, WorkingsView.Line>(StringComparer.Ordinal);
        return lines.ConvertAll(line => line.Of.IsBlank || line.Inputs.Sum(input => input.Said.Text.Length + input.Behind.Text.Length) <= OneLine || first.TryAdd(PutIn(line), line)
            ? line
            : line with { Like = new Cell(Named(first[PutIn(line)])) { Tbc = line.Inputs.Any(input => input.Said.Tbc is not null) ? "" : null } });
    }

    private static string PutIn(WorkingsView.Line line) => string.Join('\n', line.Inputs.SelectMany(input => new[] { input.Said, input.Behind }).Append(line.Result).Select(cell => $"{cell.Text}\t{cell.Tbc}"));

    private static string Named(WorkingsView.Line line) => line.Remark.IsBlank ? line.Of.Text : $"{line.Of.Text}, {line.Remark.Text}";

    private static WorkingsView.Line LineOf(Stated stated, string remark, SharedAddress shared, Cells cells, WorkingInputs inputs)
    {
        var name = IsOfOne(stated) ? stated.What.Split(", ")[0] : "";
        var own = shared.Own(stated.Address.Text);
        return new WorkingsView.Line(Cell.Of(stated.Address.Text), Cell.Of(name), Cell.Of(remark), [.. inputs.Of(stated)], Result(stated, cells))
        {
            OwnAddress = Cell.Of(WorkingRows.IsTold(own, $"{name} {remark}") ? "" : own),
            OnPaper = cells.IsMetric || stated.Value is not { } value || !IsOther(value) ? Cell.Blank : Cell.Of(cells.Said(value)),
        };
    }

    // What US paper says in other units than the working does.
    private static bool IsOther(object value) => value is UnitsNet.Length or UnitsNet.Mass or UnitsNet.Force or UnitsNet.Torque or UnitsNet.Pressure or UnitsNet.Speed or UnitsNet.Area or UnitsNet.Temperature;

    private static Cell Result(Stated stated, Cells cells)
    {
        var cell = stated.Value is { } value ? Cell.Of(Precisely.Say(value)) : new Cell("unknown") { Verdict = Paper.Tree.Verdict.CannotBeJudged };
        return cell with { Tbc = cells.NoteOf(stated.RestsOn) is null ? null : "", Address = stated.Address.Text };
    }
}
