using Advance.Domain.Figures;
using Advance.Domain.Wording;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the sheet of workings.</summary>
internal static class WorkingsViews
{
    private const int MostTerms = 6;

    // What a life, a fuse or a back may hang on. Counts of the shop and lengths of leads are explained on request.
    private static readonly string[] Subjects = ["power", "rigging", "stack", "stage", "load", "truck"];

    /// <summary>Null where nothing was worked out.</summary>
    public static WorkingsView? Of(Plan plan)
    {
        var cells = new Cells(Speech.Of(plan.Brief.Company.Units));
        var groups = plan.Figures
            .Where(stated => stated.How is not null)
            .GroupBy(stated => stated.Address.Text.Split('/')[0], StringComparer.Ordinal)
            .Where(group => Subjects.Contains(group.Key, StringComparer.Ordinal))
            .Select(group => new WorkingsView.Group(group.Key, [.. group.Select(stated => LineOf(stated, cells))]))
            .ToList();
        return groups.Count > 0 ? new WorkingsView(groups) : null;
    }

    private static WorkingsView.Line LineOf(Stated stated, Cells cells) => new(
        Cell.Of(stated.Address.Text),
        Cell.Of(stated.What),
        Cell.Of(stated.How!.Formula),
        [.. stated.How.Inputs.Select(input => InputOf(input, cells))],
        Result(stated, cells),
        Cell.Of(stated.How.Source.ToString()));

    private static Cell InputOf(Input input, Cells cells) =>
        Cell.Of($"{input.Symbol} = {Value(input.Value)}{From(input)}") with { Tbc = cells.NoteOf(input.RestsOn) is null ? null : "" };

    private static Cell Result(Stated stated, Cells cells)
    {
        var cell = stated.Value is { } value ? Cell.Of(Precisely.Say(value)) : new Cell("unknown") { Verdict = Paper.Tree.Verdict.CannotBeJudged };
        return cell with { Tbc = cells.NoteOf(stated.RestsOn) is null ? null : "" };
    }

    private static string Value(object? value) => value switch
    {
        null => "unknown",
        ITerms terms when terms.Objects.Count() > MostTerms => $"{string.Join(" + ", terms.Objects.Take(MostTerms).Select(Precisely.Say))} + … ({terms.Objects.Count()} in all)",
        ITerms terms when !terms.Objects.Any() => "0",
        _ => Precisely.Say(value),
    };

    private static string From(Input input) => input.How is null && input.Parts.Count == 0 ? $" ({WorkingText.Of(input.Why)})" : "";
}
