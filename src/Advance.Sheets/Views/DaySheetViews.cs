using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Findings;
using Advance.Domain.Gigs;
using Advance.Domain.Wording;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the day sheet.</summary>
internal static class DaySheetViews
{
    private const int WorstQuestions = 3;

    /// <summary>The day sheet of a package.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="contents">The other sheets of the package.</param>
    /// <param name="showsPrivate">Whether other people's numbers may stand on it.</param>
    public static DaySheetView Of(Plan plan, IReadOnlyList<DaySheetView.ContentsLine> contents, bool showsPrivate)
    {
        var (gig, venue, _, _) = plan.Brief;
        var cells = new Cells(Speech.Of(plan.Brief.Company.Units));
        return new DaySheetView
        {
            Facts = [.. Facts(plan, cells).Where(fact => !fact.Value.IsBlank)],
            Schedule = [.. gig.Schedule.Select(row => ScheduleOf(row, cells))],
            RunningOrder = [.. gig.Acts.SelectMany(act => act.Sets.Select(set => SetOf(act, set)))],
            People = [.. gig.People.Select(person => PersonOf(person, cells, showsPrivate))],
            Contacts = [.. venue.Contacts.Where(contact => showsPrivate || !contact.Private).Select(contact => ContactOf(contact, cells))],
            Limits = [.. Limits(plan, cells)],
            Welfare = [.. Welfare(plan, cells)],
            Access = [.. venue.Access.Or([]).Select(step => new DaySheetView.AccessLine(
                Cell.Of(step.What), cells.Of(step.Wide), cells.Of(step.High), cells.Of(step.Long), Cell.Of(step.Note)))],
            AccessUnknown = venue.Access.Doubt is { } doubt && !venue.Access.IsKnown ? new Cell("") { Tbc = cells.Note(doubt) } : Cell.Of("nothing known"),
            Totals = [.. Totals(plan, cells)],
            New = gig.New,
            Findings = [.. plan.Findings.Where(finding => finding.Accepted is null).Select(finding => FindingOf(finding, plan))],
            Accepted = [.. gig.Accepted.Select(row => new DaySheetView.AcceptedLine(row.Rule, row.Where, row.Figures, row.By, row.Why))],
            Questions = [.. Worst(plan).Select(doubt => QuestionOf(doubt, plan, cells))],
            QuestionCount = plan.Brief.OpenQuestions.Count,
            Contents = contents,
        };
    }

    private static IEnumerable<PairView> Facts(Plan plan, Cells cells)
    {
        var (gig, venue, _, _) = plan.Brief;
        yield return new PairView("Venue", Cell.Of(venue.Name));
        yield return new PairView("Address", Cell.Of(venue.Address));
        yield return new PairView("Client", Cell.Of(gig.Client));
        if (venue.Key is not null)
        {
            yield return new PairView("Key", cells.Of(venue.Key));
        }

        if (venue.KeyForLoadOut is not null)
        {
            yield return new PairView("Key for the load-out", cells.Of(venue.KeyForLoadOut));
        }

        foreach (var truck in gig.Trucks)
        {
            yield return new PairView(truck.Name, cells.Of(truck.Driver));
        }
    }

    private static DaySheetView.ScheduleLine ScheduleOf(ScheduleRow row, Cells cells) =>
        new(cells.Of(row.Time) with { Strong = true }, Cell.Of(row.What), cells.Of(row.Who), Cell.Of(row.Where), row.IsHold);

    private static DaySheetView.SetLine SetOf(Act act, Given<SetTime> set) => set.Is(out var time)
        ? new(Cell.Of(time.Start.ToString()) with { Strong = true }, Cell.Of(time.End.ToString()), Cell.Of(act.Name), Cell.Number((int)time.Length.Minutes))
        : new(new Cell("") { Tbc = "" }, Cell.Blank, Cell.Of(act.Name), Cell.Blank);

    private static DaySheetView.PersonLine PersonOf(Person person, Cells cells, bool showsPrivate)
    {
        var isManager = IsManager(person);
        return new(
            Cell.Of(person.Name) with { Strong = true }, Cell.Of(person.Does), cells.Of(person.Call), showsPrivate || isManager ? Phone(person.Phone, cells) : Cell.Blank);
    }

    /// <summary>Whose number everybody may have.</summary>
    public static bool IsManager(Person person) => person.Does.Contains("production manager", StringComparison.OrdinalIgnoreCase);

    private static DaySheetView.PersonLine ContactOf(Contact contact, Cells cells) =>
        new(Cell.Of(contact.Name), Cell.Of(contact.Role), Cell.Blank, Phone(contact.Phone, cells));

    // A number is dialled in one go: no line may part it.
    private static Cell Phone(Given<string>? phone, Cells cells) => cells.Of(phone) is var cell ? cell with { Text = cell.Text.Replace(' ', '\u00A0') } : cell;

    private static IEnumerable<PairView> Limits(Plan plan, Cells cells)
    {
        var rules = plan.Brief.Venue.Rules;
        PairView?[] all =
        [
            rules.MusicOff is null ? null : new("Music off", cells.Of(rules.MusicOff)),
            rules.Empty is null ? null : new("Building empty", cells.Of(rules.Empty)),
            rules.Quiet is null ? null : new("Quiet", cells.Of(rules.Quiet)),
            rules.SoundLimit is null ? null : new("Sound limit", cells.Of(rules.SoundLimit)),
            rules.Haze is null ? null : new("Haze", cells.Of(rules.Haze)),
            rules.Wind is null ? null : new("Wind", cells.Of(rules.Wind)),
        ];
        return all.OfType<PairView>();
    }

    private static IEnumerable<PairView> Welfare(Plan plan, Cells cells)
    {
        var said = plan.Brief.Venue.Safety.Concat(plan.Brief.Venue.Welfare);
        foreach (var (name, value) in said)
        {
            yield return new PairView(Capital(name.Replace('-', ' ')), cells.Of(value));
        }

        if (plan.Brief.Gig.Crew.Meals is not null)
        {
            yield return new PairView("Meals", cells.Of(plan.Brief.Gig.Crew.Meals));
        }
    }

    private static IEnumerable<PairView> Totals(Plan plan, Cells cells)
    {
        yield return new PairView("Crew", Cell.Number(plan.Brief.Gig.People.Count + (plan.Brief.Gig.Crew.Hands?.Or(0) ?? 0)));
        yield return new PairView("Pieces", cells.Of(plan.Load.Pieces));
        yield return new PairView("Weight without cases", cells.WithUnit(plan.Load.Weight));
        yield return new PairView("Lines", Cell.Number(plan.Patch.Lines.Count));
    }

    // What is needed first hurts first; what has no date comes last.
    private static IEnumerable<Doubt> Worst(Plan plan)
    {
        var show = plan.ShowDate ?? DateOnly.MaxValue;
        return plan.Brief.OpenQuestions
            .OrderBy(doubt => doubt.By is { } by && plan.ShowDate is { } near ? by.Resolve(near) : show)
            .ThenBy(doubt => doubt)
            .Take(WorstQuestions);
    }

    private static DaySheetView.QuestionLine QuestionOf(Doubt doubt, Plan plan, Cells cells) => new(
        Cell.Of(Cells.Subject(doubt)),
        Cell.Of(doubt.Written ?? "") with { Tbc = "" },
        Cell.Of(doubt.Who ?? ""),
        doubt.By is not { } by ? Cell.Blank : plan.ShowDate is { } near ? Cell.Date(by.Resolve(near)) : Cell.Of(cells.Note(doubt with { Who = null })));

    private static DaySheetView.FindingLine FindingOf(Finding finding, Plan plan)
    {
        var speech = Speech.Of(plan.Brief.Company.Units);
        return new(finding.Severity.Word(), speech.Say(finding.Says), finding.Rule, speech.Say(finding.Cure), Cells.Head(finding.RestsOn));
    }

    /// <summary>With a capital letter in front.</summary>
    internal static string Capital(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];
}
