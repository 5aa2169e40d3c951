using Advance.Domain.Facts;
using Advance.Domain.Findings;
using Advance.Domain.Gigs;
using Advance.Domain.Venues;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the load-in sheet.</summary>
internal static class LoadInViews
{
    private static readonly string[] Families = ["access/", "crew/"];

    /// <summary>Null where there is nothing to do.</summary>
    public static LoadInView? Of(Plan plan)
    {
        if (plan.Crew.Tasks.Count == 0)
        {
            return null;
        }

        var cells = new Cells(plan);
        var lines = new TaskLines(plan, cells);
        var front = Front(plan, cells, finding => !IsLoadOut(finding)) with
        {
            Tasks = [.. plan.Crew.Tasks.Select(lines.In)],
            Times = [.. Times(plan, cells)],
        };
        return new LoadInView(front, [.. plan.Power.SwitchOn.Select(step => StepOf(step, cells))], Cells.Head(plan.Crew.RestsOn));
    }

    private static LoadInView.Step StepOf(SwitchOnStep step, Cells cells) => new(
        Cell.Number(step.Number),
        Cell.Of(step.Device.Name),
        Cell.Of(string.Join(", ", step.Circuits.Select(circuit => circuit.Chain.Name))),
        cells.Amount(step.Inrush, current => current.Amperes, 0),
        step.MixesLoudspeakers ? Cell.Of("loudspeakers off at themselves before") : Cell.Blank);

    /// <summary>What stands before the tasks of both sheets.</summary>
    internal static CrewWorkView Front(Plan plan, Cells cells, Func<Finding, bool> isWanted)
    {
        var (gig, venue, company, _) = plan.Brief;
        return new CrewWorkView
        {
            Calls = [.. Calls(plan, cells)],
            Safety = [.. Safety(plan, cells)],
            Access = [.. venue.Access.Or([]).Select(step => new CrewWorkView.AccessLine(
                Cell.Of(step.What), cells.Of(step.Wide), cells.Of(step.High), cells.Of(step.Long), NoteOf(step, cells)))],
            HasWidths = venue.Access.Or([]).Any(step => step.Wide is not null || step.High is not null),
            AccessUnknown = venue.Access.Doubt is { } doubt && !venue.Access.IsKnown ? new Cell("") { Tbc = cells.Note(doubt) } : Cell.Blank,
            Vehicles = [.. gig.Trucks.Select(truck => new PairView(truck.Name, VehicleOf(truck, cells)))],
            Findings = FindingViews.Of(plan, finding => Families.Any(family => finding.Rule.StartsWith(family, StringComparison.Ordinal)) && isWanted(finding)),
            IsRaised = gig.Lighting.Fixtures.Count > 0,
            IsHeavy = plan.Crew.Tasks.Any(task => task.Lift is { } lift && lift.Weight.Value > company.Policies.Lifts.One),
            Tasks = [],
            Times = [],
        };
    }

    /// <summary>Whether a finding speaks of the way out.</summary>
    internal static bool IsLoadOut(Finding finding) => finding.Where.Text.StartsWith("crew/load-out", StringComparison.Ordinal);

    // What has no column of its own: few ways have any of it.
    private static Cell NoteOf(AccessStep step, Cells cells)
    {
        var (turn, load) = (cells.Of(step.Turn), cells.Of(step.Load));
        string[] said =
        [
            step.Steps > 0 ? $"{step.Steps} {(step.Steps == 1 ? "step" : "steps")}" : "",
            turn.Text.Length > 0 ? $"turn {turn.Text}" : "",
            load.Text.Length > 0 ? $"carries {load.Text}" : "",
            step.Note,
        ];
        return Cell.Of(string.Join("; ", said.Where(part => part.Length > 0))) with { Tbc = turn.Tbc ?? load.Tbc };
    }

    private static Cell VehicleOf(Truck truck, Cells cells)
    {
        var parks = cells.Of(truck.Parks);
        var driver = cells.Of(truck.Driver);
        var text = string.Join(", ", new[] { driver.Text, parks.Text.Length > 0 ? $"stands on {parks.Text}" : "" }.Where(part => part.Length > 0));
        return Cell.Of(text) with { Tbc = driver.Tbc ?? parks.Tbc };
    }

    private static IEnumerable<CrewWorkView.CallLine> Calls(Plan plan, Cells cells)
    {
        var gig = plan.Brief.Gig;
        foreach (var person in gig.People)
        {
            yield return new(cells.Of(person.Call) with { Strong = true }, Cell.Of(person.Name), Cell.Of(person.Does), Cell.Of(string.Join(", ", person.Skills)), MeetAt(person.Call, gig));
        }

        if (gig.Crew.Hands is { } hands && hands.Or(0) is not 0)
        {
            var count = cells.Of(hands);
            yield return new(Cell.Blank, count with { Text = $"{count.Text} hands" }, Cell.Blank, Cell.Blank, Cell.Blank);
        }
    }

    // Where the day begins at their call.
    private static Cell MeetAt(Given<Moment>? call, Gig gig) => call is { IsKnown: true } given
        ? Cell.Of(gig.Schedule.FirstOrDefault(row => row.Time.IsKnown && row.Time.Value == given.Value && row.Where.Length > 0)?.Where ?? "")
        : Cell.Blank;

    private static IEnumerable<PairView> Safety(Plan plan, Cells cells)
    {
        var venue = plan.Brief.Venue;
        foreach (var (name, value) in venue.Safety)
        {
            yield return new PairView(DaySheetViews.Capital(name.Replace('-', ' ')), cells.Of(value));
        }

        if (venue.Welfare.TryGetValue("toilets", out var toilets))
        {
            yield return new PairView("Toilets", cells.Of(toilets));
        }

        if (plan.Brief.Gig.Crew.Meals is not null)
        {
            yield return new PairView("Meals", cells.Of(plan.Brief.Gig.Crew.Meals));
        }
    }

    private static IEnumerable<PairView> Times(Plan plan, Cells cells)
    {
        if (plan.Crew.LoadInEnd is { } end)
        {
            yield return new PairView("All stands by", Cell.Of(end.ToString()) with { Tbc = cells.NoteOf(plan.Crew.RestsOn) });
        }

        if (plan.Crew.HeaviestLift is { } lift)
        {
            yield return new PairView("Heaviest lift", TaskLines.LiftOf(lift, plan, cells));
        }

        yield return new PairView("Called", cells.Of(plan.Crew.Called));
    }
}
