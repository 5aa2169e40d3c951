using Advance.Domain.Figures;
using Advance.Domain.Wording;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the sheet of workings.</summary>
internal static class WorkingsViews
{
    private const int MostTerms = 12;
    private const int MostParts = 6;
    private const int OneLine = 60;

    // What a life, a fuse or a back may hang on. Counts of the shop and lengths of leads are explained on request.
    private static readonly string[] Subjects = ["power", "rigging", "stack", "stage", "truck"];

    // The load of a vehicle and its parts; what a department pulls is no safety figure.
    private const string Load = "load";

    /// <summary>Null where nothing was worked out.</summary>
    public static WorkingsView? Of(Plan plan)
    {
        var cells = new Cells(plan);
        var groups = plan.Figures
            .Where(stated => stated.How is not null && IsSafety(stated.Address.Text.Split('/')))
            .GroupBy(stated => (Kind: Kind(stated), stated.How!.Formula, Source: stated.How.Source.ToString()))
            .Select(group => GroupOf(group.Key, [.. group], cells))
            .ToList();
        return groups.Count > 0 ? new WorkingsView(groups) { IsMetric = plan.Brief.Company.Units == Domain.Wording.UnitSystem.Metric } : null;
    }

    private static bool IsSafety(string[] path) => Subjects.Contains(path[0], StringComparer.Ordinal) || (path[0] == Load && path is not [_, "department" or "pieces", ..]);

    // "PD1 outlet 1, current in use, worst in show": what of, what, and a remark.
    private static string Kind(Stated stated) => DaySheetViews.Capital(IsOfOne(stated) ? stated.What.Split(", ")[1] : stated.What);

    // What the figure is of comes first; a figure of the gig as a whole has no such part.
    private static bool IsOfOne(Stated stated) => stated.Address.Text.Count(letter => letter == '/') > 1 && stated.What.Contains(", ", StringComparison.Ordinal);

    private static WorkingsView.Group GroupOf((string Kind, string Formula, string Source) key, List<Stated> figures, Cells cells)
    {
        var shared = SharedAddress.Of([.. figures.Select(stated => stated.Address.Text)]);
        return new WorkingsView.Group(
            Cell.Of(key.Kind), Cell.Of(key.Formula), Cell.Of(FormulaWords.Of(key.Formula)), Cell.Of(key.Source), Likened([.. figures.Select(stated => LineOf(stated, shared, cells))]))
        {
            SharedAddress = Cell.Of(shared.Text),
        };
    }

    // What takes more than a line to put in is told once for all that are open alike.
    private static List<WorkingsView.Line> Likened(List<WorkingsView.Line> lines)
    {
        var first = new Dictionary<string, WorkingsView.Line>(StringComparer.Ordinal);
        return lines.ConvertAll(line => line.Of.IsBlank || line.Inputs.Sum(input => input.Text.Length) <= OneLine || first.TryAdd(PutIn(line), line)
            ? line
            : line with { Like = new Cell(Named(first[PutIn(line)])) { Tbc = line.Inputs.Any(input => input.Tbc is not null) ? "" : null } });
    }

    private static string PutIn(WorkingsView.Line line) => string.Join('\n', line.Inputs.Append(line.Result).Select(cell => $"{cell.Text}\t{cell.Tbc}"));

    private static string Named(WorkingsView.Line line) => line.Remark.IsBlank ? line.Of.Text : $"{line.Of.Text}, {line.Remark.Text}";

    private static WorkingsView.Line LineOf(Stated stated, SharedAddress shared, Cells cells)
    {
        var words = IsOfOne(stated) ? stated.What.Split(", ") : [""];
        return new WorkingsView.Line(
            Cell.Of(stated.Address.Text),
            Cell.Of(words[0]),
            Cell.Of(string.Join(", ", words.Skip(2))),
            [.. stated.How!.Inputs.Select(input => InputOf(input, cells))],
            Result(stated, cells))
        {
            OwnAddress = Cell.Of(shared.Own(stated.Address.Text)),
            OnPaper = cells.IsMetric || stated.Value is not { } value || !IsOther(value) ? Cell.Blank : Cell.Of(cells.Said(value)),
        };
    }

    // What US paper says in other units than the working does.
    private static bool IsOther(object value) => value is UnitsNet.Length or UnitsNet.Mass or UnitsNet.Force or UnitsNet.Torque or UnitsNet.Pressure or UnitsNet.Speed or UnitsNet.Area or UnitsNet.Temperature;

    private static Cell InputOf(Input input, Cells cells) =>
        Cell.Of($"{input.Symbol} = {Value(input)}{From(input)}") with { Tbc = cells.NoteOf(input.RestsOn) is null ? null : "" };

    private static Cell Result(Stated stated, Cells cells)
    {
        var cell = stated.Value is { } value ? Cell.Of(Precisely.Say(value)) : new Cell("unknown") { Verdict = Paper.Tree.Verdict.CannotBeJudged };
        return cell with { Tbc = cells.NoteOf(stated.RestsOn) is null ? null : "", Address = stated.Address.Text };
    }

    private static string Value(Input input) => input.Value switch
    {
        null => "unknown",
        ITerms terms when !terms.Objects.Any() => "0",
        ITerms terms => Terms([.. terms.Objects.Select(Precisely.Say)]),
        var value => $"{Precisely.Say(value)}{Parts(input)}",
    };

    // Like terms that follow each other are counted: "4 × 1.7 A + 2.2 A".
    private static string Terms(List<string> said)
    {
        var runs = new List<(string Said, int Count)>();
        foreach (var term in said)
        {
            var isLike = runs.Count > 0 && runs[^1].Said == term;
            if (isLike)
            {
                runs[^1] = (term, runs[^1].Count + 1);
            }
            else
            {
                runs.Add((term, 1));
            }
        }

        var shown = string.Join(" + ", runs.Take(MostTerms).Select(run => run.Count > 1 ? $"{run.Count} × {run.Said}" : run.Said));
        return runs.Count > MostTerms ? $"{shown} + … ({said.Count} in all)" : shown;
    }

    // What was itself worked out is told by its parts, one level down: the drop on each lead of a way.
    private static string Parts(Input input)
    {
        var parts = input.How is { Inputs: [{ Parts.Count: > 1 } sum] } ? sum.Parts : [];
        var alike = parts.GroupBy(part => $"{part.Name} {(part.Result is { } result ? Precisely.Say(result) : "unknown")}", StringComparer.Ordinal)
            .Select(some => some.Count() > 1 ? $"{some.Count()} × {some.Key}" : some.Key).ToList();
        var more = alike.Count > MostParts ? $"; … ({parts.Count} in all)" : "";
        return parts.Count == 0 ? "" : $" ({string.Join("; ", alike.Take(MostParts))}{more})";
    }

    private static string From(Input input) => input.Why switch
    {
        _ when input.How is not null || input.Parts.Count > 0 => "",
        Reason.Fixed or Reason.Policy => $" ({WorkingText.Of(input.Why)})",
        _ => "",
    };
}
