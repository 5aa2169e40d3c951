using Advance.Domain.Facts;
using Advance.Domain.Wording;
using Advance.Handbook;
using Advance.Paper.Tree;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the lighting patch.</summary>
internal sealed class LightingPatchViews
{
    private readonly Plan plan;
    private readonly Speech speech;
    private readonly Cells cells;
    private readonly LeadCells leads;

    private LightingPatchViews(Plan plan)
    {
        this.plan = plan;
        speech = Speech.Of(plan.Brief.Company.Units);
        cells = new Cells(plan);
        leads = new LeadCells(plan, speech, Short(plan));
    }

    /// <summary>Null where there is no fixture.</summary>
    public static LightingPatchView? Of(Plan plan) => plan.Lighting.Fixtures.Count > 0 ? new LightingPatchViews(plan).View() : null;

    // On lines of control and on circuits a fixture goes by different names.
    private static Dictionary<string, string> Short(Plan plan)
    {
        var names = plan.Lighting.Fixtures.DistinctBy(fixture => fixture.Name).ToDictionary(fixture => fixture.Name, fixture => $"fixture {fixture.Number}", StringComparer.Ordinal);
        foreach (var load in plan.Power.Circuits.SelectMany(circuit => circuit.Chain.Loads))
        {
            if (plan.Lighting.Fixtures.FirstOrDefault(fixture => fixture.Address == load.Address) is { } fixture)
            {
                names[load.Name] = $"fixture {fixture.Number}";
            }
        }

        return names;
    }

    private LightingPatchView View()
    {
        var lighting = plan.Lighting;
        var nowhere = lighting.Fixtures.Where(fixture => fixture.Position is null).ToList();
        return new LightingPatchView(
            plan.Brief.Gig.Lighting.Control is { } desk ? Cell.Of($"{desk.Name}, {desk.Item.Or("TBC")}, {cells.Of(desk.Place).Text}") : Cell.Blank,
            [
                .. lighting.Positions.Select(PositionOf).Where(position => position.Fixtures.Count > 0),
                .. nowhere.Count > 0 ? [new LightingPatchView.Position(Unknown("no position"), Cell.Blank, Cell.Blank, Cell.Blank, Cell.Blank, [.. nowhere.Select(FixtureOf)])] : Array.Empty<LightingPatchView.Position>(),
            ],
            [.. lighting.Universes.Select(UniverseOf)],
            FindingViews.Heavy(plan, finding => FindingViews.IsOf(finding, "lighting")),
            Cells.Head(plan.Cables.RestsOn.With(plan.Power.RestsOn)));
    }

    private LightingPatchView.Position PositionOf(LightingPosition position) => new(
        Cell.Of(position.Name) with { Strong = true },
        Cell.Of(position.Carrier?.Item ?? ""),
        cells.Of(position.Position.Place),
        cells.WithUnit(position.Trim),
        cells.WithUnit(position.Carries),
        [.. plan.Lighting.Fixtures.Where(fixture => fixture.Position?.Address == position.Address).Select(FixtureOf)]);

    private LightingPatchView.Fixture FixtureOf(FixturePlan fixture)
    {
        var doubt = cells.NoteOf(fixture.ControlDoubts);
        return new LightingPatchView.Fixture(
            Cell.Number(fixture.Number) with { Strong = true },
            cells.Of(fixture.Row.Item),
            fixture.Spot is { } spot ? Cell.Of(PlaceWords.Of(At(spot), speech)) : Unknown("unknown"),
            Cell.Of(fixture.Row.Purpose),
            fixture.Mode is { } mode ? Cell.Of(mode.Name) : Unknown(fixture.Row.Mode.Length > 0 ? fixture.Row.Mode : "unknown"),
            fixture.At is { } at ? Cell.Number(at.Universe) : Unknown("none"),
            fixture.At is { } slot ? Cell.Number(slot.Slot) with { Strong = true, Tbc = doubt } : Unknown("none") with { Tbc = doubt },
            LineOf(fixture),
            leads.From(plan.Lighting.Links.FirstOrDefault(link => link.To.Port.Device == fixture.Name)),
            leads.CircuitOf(fixture.Address) is { } found ? Cell.Of($"{found.Circuit.Outlet.Device?.Name}-{found.Circuit.Outlet.Number}") : Cell.Blank,
            leads.MainsIn(fixture.Address),
            fixture.Piece.Kind?.Weight is { } weight ? Kilograms(weight) : Unknown("unknown"));
    }

    private Cell LineOf(FixturePlan fixture)
    {
        foreach (var line in plan.Lighting.Lines)
        {
            var place = line.Fixtures.ToList().FindIndex(other => other.Address == fixture.Address);
            if (place >= 0)
            {
                return Cell.Of($"{line.Universe}{(line.Splitter is null ? "" : $"/{line.Output}")}–{place + 1}");
            }
        }

        return Cell.Blank;
    }

    private LightingPatchView.Universe UniverseOf(UniverseUse use)
    {
        var free = use.Used.Value is { } used ? Cell.Number(LightingControl.SlotsInUniverse - used) : Unknown("?");
        var lines = plan.Lighting.Lines.Where(line => line.Universe == use.Universe)
            .Select(line => $"{line.Name}: {line.Fixtures.Count} fixtures, {(line.Units.Value is { } units ? $"{units} of {line.Most.Value} unit loads" : "unit loads unknown")}, terminated after fixture {line.Fixtures[^1].Number}");
        return new LightingPatchView.Universe(Cell.Number(use.Universe) with { Strong = true }, cells.Of(use.Used), free, cells.Of(use.KeptFree), Cell.Of(string.Join("; ", lines)));
    }

    private Cell Kilograms(Given<UnitsNet.Mass> weight)
    {
        var cell = weight.Is(out var mass) ? Cell.Of(speech.Say(mass)) : Unknown("unknown");
        return cell with { Tbc = weight.Doubt is { } doubt ? cells.Note(doubt) : null };
    }

    private static Domain.Places.Place.AtPoint At(Spot spot) => new(UnitsNet.Length.FromMeters(spot.X), UnitsNet.Length.FromMeters(spot.Y), Z: null);

    private static Cell Unknown(string words) => new(words) { Verdict = Verdict.CannotBeJudged };
}
