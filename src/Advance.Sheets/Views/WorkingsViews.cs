using Advance.Domain.Figures;
using Advance.Domain.Wording;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the sheet of workings.</summary>
internal static class WorkingsViews
{
    private const int MostTerms = 6;

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
            .Select(group => new WorkingsView.Group(
                Cell.Of(group.Key.Kind), Cell.Of(group.Key.Formula), Cell.Of(FormulaWords.Of(group.Key.Formula)), Cell.Of(group.Key.Source), [.. group.Select(stated => LineOf(stated, cells))]))
            .ToList();
        return groups.Count > 0 ? new WorkingsView(groups) { IsMetric = plan.Brief.Company.Units == Domain.Wording.UnitSystem.Metric } : null;
    }

    private static bool IsSafety(string[] path) => Subjects.Contains(path[0], StringComparer.Ordinal) || (path[0] == Load && path is not [_, "department" or "pieces", ..]);

    // "PD1 outlet 1, current in use, worst in show": what of, what, and a remark.
    private static string Kind(Stated stated) => DaySheetViews.Capital(IsOfOne(stated) ? stated.What.Split(", ")[1] : stated.What);

    // What the figure is of comes first; a figure of the gig as a whole has no such part.
    private static bool IsOfOne(Stated stated) => stated.Address.Text.Count(letter => letter == '/') > 1 && stated.What.Contains(", ", StringComparison.Ordinal);

    private static WorkingsView.Line LineOf(Stated stated, Cells cells)
    {
        var words = IsOfOne(stated) ? stated.What.Split(", ") : [""];
        return new WorkingsView.Line(
            Cell.Of(stated.Address.Text),
            Cell.Of(words[0]),
            Cell.Of(string.Join(", ", words.Skip(2))),
            [.. stated.How!.Inputs.Select(input => InputOf(input, cells))],
            Result(stated, cells))
        {
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
        ITerms terms when terms.Objects.Count() > MostTerms => $"{string.Join(" + ", terms.Objects.Take(MostTerms).Select(Precisely.Say))} + … ({terms.Objects.Count()} in all)",
        var value => $"{Precisely.Say(value)}{Parts(input)}",
    };

    // What was itself worked out is told by its parts, one level down: the drop on each lead of a way.
    private static string Parts(Input input)
    {
        var parts = input.How is { Inputs: [{ Parts.Count: > 1 } sum] } ? sum.Parts : [];
        var alike = parts.GroupBy(part => $"{part.Name} {(part.Result is { } result ? Precisely.Say(result) : "unknown")}", StringComparer.Ordinal);
        return parts.Count == 0 ? "" : $" ({string.Join("; ", alike.Select(some => some.Count() > 1 ? $"{some.Count()} × {some.Key}" : some.Key))})";
    }

    private static string From(Input input) => input.Why switch
    {
        _ when input.How is not null || input.Parts.Count > 0 => "",
        Reason.Fixed or Reason.Policy => $" ({WorkingText.Of(input.Why)})",
        _ => "",
    };
}
