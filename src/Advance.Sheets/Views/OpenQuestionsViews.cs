using Advance.Domain.Facts;
using Advance.Domain.Findings;
using Advance.Domain.Wording;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the list of open questions.</summary>
internal static class OpenQuestionsViews
{
    private static readonly string[] LifeSafety = ["residual-protection", "earthing", "safety / ", "limit"];

    // What the figures of a department are about, for somebody who has never seen the plan.
    private static readonly Dictionary<string, string> Matters = new(StringComparer.Ordinal)
    {
        ["cable"] = "which leads are laid",
        ["stock"] = "what is pulled",
        ["case"] = "what each case holds and weighs",
        ["loose"] = "what travels loose",
        ["load"] = "weight and room of the load",
        ["access"] = "what comes through the doors",
        ["crew"] = "times and hands",
        ["patch"] = "the patch",
        ["power"] = "currents and protection",
        ["voltage"] = "voltage at the end of leads",
        ["rigging"] = "loads on points",
        ["sound"] = "levels and delays",
        ["lights"] = "heights of fixtures",
        ["lighting"] = "addresses of fixtures",
        ["stage"] = "the stage",
        ["truck"] = "the trucks",
    };

    /// <summary>Null where nothing is open.</summary>
    public static OpenQuestionsView? Of(Plan plan)
    {
        var speech = Speech.Of(plan.Brief.Company.Units);
        var cells = new Cells(plan);
        var questions = InOrder(plan).Select(doubt => LineOf(doubt, plan, cells));
        var checks = plan.Findings.Where(finding => finding is { CannotBeJudged: true, Accepted: null })
            .Select(finding => new OpenQuestionsView.Check(Cell.Of(finding.Severity.Word()), Cell.Of(speech.Say(finding.Says)), Cell.Of(speech.Say(finding.Cure))));
        var view = new OpenQuestionsView([.. questions], [.. checks]);
        return view.Questions.Count + view.NotJudged.Count > 0 ? view : null;
    }

    /// <summary>Every open question: what is needed first hurts first, and of one day what most hangs on; what has no date comes last.</summary>
    internal static IEnumerable<Doubt> InOrder(Plan plan) => plan.Brief.OpenQuestions
        .OrderBy(doubt => doubt.By is { } by && plan.ShowDate is { } near ? by.Resolve(near) : DateOnly.MaxValue)
        .ThenByDescending(doubt => Danger(doubt, plan))
        .ThenByDescending(doubt => IsLifeSafety(doubt))
        .ThenBy(doubt => doubt);

    private static OpenQuestionsView.Line LineOf(Doubt doubt, Plan plan, Cells cells) => new(
        doubt.By is not { } by ? Cell.Blank : plan.ShowDate is { } near ? Cell.Date(by.Resolve(near)) : Cell.Of(cells.Note(doubt with { Who = null })),
        Cell.Of(doubt.Who ?? ""),
        Cell.Of(QuestionWords.Of(doubt, plan)),
        Cell.Of(doubt.Written ?? "") with { Tbc = "" },
        Cell.Of(Hangs(doubt, plan)));

    // The heaviest stop that rests on it; a stop that life hangs on is known by its weight.
    private static int Danger(Doubt doubt, Plan plan) =>
        plan.Findings.Where(finding => finding.RestsOn.Contains(doubt)).Select(finding => (int)finding.Severity).DefaultIfEmpty(-1).Max();

    // Nobody may be left without these, whatever a rule says of them.
    private static bool IsLifeSafety(Doubt doubt) => LifeSafety.Any(words => doubt.Subject.Contains(words, StringComparison.Ordinal));

    private static string Hangs(Doubt doubt, Plan plan)
    {
        var roots = plan.Figures.Where(stated => stated.RestsOn.Contains(doubt)).Select(stated => stated.Address.Text.Split('/')[0]).Distinct(StringComparer.Ordinal);
        var checks = plan.Findings.Count(finding => finding.RestsOn.Contains(doubt));
        var named = roots.Select(root => Matters.GetValueOrDefault(root, root)).Distinct(StringComparer.Ordinal).ToList();
        if (checks > 0)
        {
            named.Add($"{checks} {(checks == 1 ? "finding" : "findings")}");
        }

        return string.Join(", ", named);
    }
}
