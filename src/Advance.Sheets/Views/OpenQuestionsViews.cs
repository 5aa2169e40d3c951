using Advance.Domain.Facts;
using Advance.Domain.Findings;
using Advance.Domain.Wording;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the list of open questions.</summary>
internal static class OpenQuestionsViews
{
    private const int MostNamed = 2;

    /// <summary>Null where nothing is open.</summary>
    public static OpenQuestionsView? Of(Plan plan)
    {
        var speech = Speech.Of(plan.Brief.Company.Units);
        var cells = new Cells(speech);
        var show = plan.ShowDate;
        var questions = plan.Brief.OpenQuestions
            .OrderBy(doubt => doubt.By is { } by && show is { } near ? by.Resolve(near) : DateOnly.MaxValue)
            .ThenByDescending(doubt => Danger(doubt, plan))
            .ThenBy(doubt => doubt)
            .Select(doubt => LineOf(doubt, plan, cells));
        var checks = plan.Findings.Where(finding => finding is { CannotBeJudged: true, Accepted: null })
            .Select(finding => new OpenQuestionsView.Check(Cell.Of(finding.Severity.Word()), Cell.Of(speech.Say(finding.Says)), Cell.Of(speech.Say(finding.Cure))));
        var view = new OpenQuestionsView([.. questions], [.. checks]);
        return view.Questions.Count + view.NotJudged.Count > 0 ? view : null;
    }

    private static OpenQuestionsView.Line LineOf(Doubt doubt, Plan plan, Cells cells) => new(
        doubt.By is not { } by ? Cell.Blank : plan.ShowDate is { } near ? Cell.Date(by.Resolve(near)) : Cell.Of(cells.Note(doubt with { Who = null })),
        Cell.Of(doubt.Who ?? ""),
        Cell.Of(Cells.Subject(doubt)),
        Cell.Of(doubt.Written ?? "") with { Tbc = "" },
        Cell.Of(Hangs(doubt, plan)));

    // The heaviest stop that rests on it; a stop that life hangs on is known by its weight.
    private static int Danger(Doubt doubt, Plan plan) =>
        plan.Findings.Where(finding => finding.RestsOn.Contains(doubt)).Select(finding => (int)finding.Severity).DefaultIfEmpty(-1).Max();

    private static string Hangs(Doubt doubt, Plan plan)
    {
        var figures = plan.Figures.Where(stated => stated.RestsOn.Contains(doubt)).Select(stated => stated.What).ToList();
        var checks = plan.Findings.Count(finding => finding.RestsOn.Contains(doubt));
        var named = figures.Take(MostNamed).ToList();
        if (figures.Count > MostNamed)
        {
            named.Add($"{figures.Count - MostNamed} more figures");
        }

        if (checks > 0)
        {
            named.Add($"{checks} {(checks == 1 ? "finding" : "findings")}");
        }

        return string.Join(", ", named);
    }
}
