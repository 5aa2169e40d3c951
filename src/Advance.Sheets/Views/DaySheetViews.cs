using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Findings;
using Advance.Domain.Gigs;
using Advance.Domain.Venues;
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
        var cells = new Cells(plan);
        return new DaySheetView
        {
            Facts = [.. Facts(plan, cells).Where(fact => !fact.Value.IsBlank)],
            Schedule = [.. ScheduleDays.OfShow(gig).Select(row => ScheduleOf(row, cells))],
            OtherDays = [.. ScheduleDays.Others(gig).Select(found => new DaySheetView.OtherDay(ScheduleDays.NameOf(found.Day, plan), [.. found.Rows.Select(row => ScheduleOf(row, cells))]))],
            RunningOrder = [.. gig.Acts.SelectMany(act => act.Sets.Select(set => SetOf(act, set)))],
            People = [.. gig.People.Select(person => PersonOf(person, cells, showsPrivate))],
            Contacts = [.. venue.Contacts.Where(contact => showsPrivate || !contact.Private).Select(contact => ContactOf(contact, cells))],
            NumbersWith = showsPrivate ? "" : HolderOfNumbers(plan),
            Limits = [.. Limits(plan, cells)],
            Welfare = [.. Welfare(plan, cells)],
            Totals = [.. Totals(plan, cells)],
            New = gig.New,
            Stops = FindingViews.Of(plan, finding => finding.Stops),
            Concerns = plan.Findings.Count(finding => finding.Severity == Severity.Concern && finding.Accepted is null),
            Notes = plan.Findings.Count(finding => finding.Severity == Severity.Note && finding.Accepted is null),
            Accepted = FindingViews.Of(plan, finding => finding.Accepted is not null),
            Questions = [.. OpenQuestionsViews.InOrder(plan).Take(WorstQuestions).Select(doubt => QuestionOf(doubt, plan, cells))],
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

        yield return new PairView("Way in", WayIn(venue, cells));
        foreach (var truck in gig.Trucks)
        {
            yield return new PairView(truck.Name, cells.Of(truck.Driver));
        }
    }

    // From the road to the stage in one line; the load-in sheet has it in full.
    private static Cell WayIn(Venue venue, Cells cells)
    {
        if (!venue.Access.Is(out var steps))
        {
            return venue.Access.Doubt is { } doubt ? new Cell("") { Tbc = cells.Note(doubt) } : Cell.Blank;
        }

        var doubts = steps.Aggregate(Doubts.None, (sum, step) => sum.With(Doubts.Of(step.Wide?.Doubt)).With(Doubts.Of(step.High?.Doubt)).With(Doubts.Of(step.Long?.Doubt)));
        return Cell.Of(string.Join(", ", steps.Select(step => StepOf(step, cells)))) with { Tbc = cells.NoteOf(doubts) };
    }

    private static string StepOf(AccessStep step, Cells cells)
    {
        var sizes = new[] { cells.Of(step.Wide).Text, cells.Of(step.High).Text }.Where(text => text.Length > 0).ToList();
        var size = sizes.Count > 0 ? " " + string.Join(" × ", sizes) : cells.Of(step.Long).Text is { Length: > 0 } far ? $" {far}" : "";
        return step.What + size;
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

    private static string HolderOfNumbers(Plan plan)
    {
        var isAnyLeftOut = plan.Brief.Venue.Contacts.Any(contact => contact.Private) || plan.Brief.Gig.People.Any(person => !IsManager(person) && person.Phone is not null);
        return !isAnyLeftOut ? "" : plan.Brief.Gig.People.FirstOrDefault(IsManager)?.Name ?? "the production manager";
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
        yield return new PairView("Load with cases", Short(cells.WithUnit(plan.Load.Gross)));
        yield return new PairView("Vehicles", Cell.Number(plan.Brief.Gig.Trucks.Count));
        yield return new PairView("Lines", Cell.Number(plan.Patch.Lines.Count));
        foreach (var service in plan.Power.Services)
        {
            yield return new PairView(Capital(service.Name), InUse(service, cells));
        }
    }

    // The fullest leg, in the state in which it is.
    private static Cell InUse(SupplyPoint service, Cells cells)
    {
        if (service.Legs.Count == 0)
        {
            return Cell.Of("nothing");
        }

        var legs = service.Legs.OrderByDescending(use => use.InUse.Value is null).ThenByDescending(use => use.InUse.Value?.Amperes ?? 0).ToList();
        var (use, limit) = (cells.WithUnit(legs[0].InUse), cells.WithUnit(service.Limit));
        return use with { Text = $"{use.Text} of {limit.Text}{(legs[0].Leg.Length > 0 ? $", {legs[0].Leg}" : "")}", Tbc = use.Tbc is null && limit.Tbc is null ? null : "" };
    }

    private static Cell Short(Cell cell) => cell.Tbc is null ? cell : cell with { Tbc = "" };

    private static DaySheetView.QuestionLine QuestionOf(Doubt doubt, Plan plan, Cells cells) => new(
        Cell.Of(QuestionWords.Of(doubt, plan)),
        Cell.Of(doubt.Written ?? "") with { Tbc = "" },
        Cell.Of(doubt.Who ?? ""),
        doubt.By is not { } by ? Cell.Blank : plan.ShowDate is { } near ? Cell.Date(by.Resolve(near)) : Cell.Of(cells.Note(doubt with { Who = null })));

    /// <summary>With a capital letter in front.</summary>
    internal static string Capital(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];
}
