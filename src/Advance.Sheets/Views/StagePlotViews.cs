using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Domain.Wording;
using Advance.Planning;
using Advance.Sheets.Drawings;
using UnitsNet;

namespace Advance.Sheets.Views;

/// <summary>Makes the stage plots.</summary>
internal static class StagePlotViews
{
    /// <summary>One for each act, and before them one of the whole stage where there is more than one act, or none.</summary>
    public static StagePlotsView Of(Plan plan)
    {
        var speech = Speech.Of(plan.Brief.Company.Units);
        return new StagePlotsView([.. plan.Stage.Stages.SelectMany(stage => Of(stage, plan, speech))]);
    }

    private static IEnumerable<StagePlotView> Of(Stage stage, Plan plan, Speech speech)
    {
        var cells = new Cells(plan);
        var acts = plan.Brief.Gig.Acts;
        var name = plan.Stage.Stages.Count > 1 ? $", {stage.Name}" : "";
        IReadOnlyList<PairView> facts = [.. Facts(stage, cells)];
        if (acts.Count != 1)
        {
            yield return new StagePlotView($"stage-plot-{Slug.Of(stage.Name)}", $"Stage plot{name}", "", stage.Name, "", facts, Further(stage, null, plan, speech, cells));
        }

        foreach (var act in acts)
        {
            var id = $"stage-plot-{Slug.Of(stage.Name)}-{Slug.Of(act.Name)}";
            yield return new StagePlotView(id, $"Stage plot{name}", About(act), stage.Name, act.Name, facts, Further(stage, act.Name, plan, speech, cells));
        }
    }

    private static IReadOnlyList<PairView> Further(Stage stage, string? act, Plan plan, Speech speech, Cells cells) =>
    [
        .. StagePlotDrawing.FurtherOut(plan, stage, act).Select(thing => new PairView(thing.Name, Cell.Of(Where(thing, speech)))),
        .. plan.Power.Services.Where(point => point.Service?.Place is not null).Select(point => new PairView(point.Name, cells.Of(point.Service!.Place))),
    ];

    private static string About(Act act)
    {
        var sets = act.Sets.Where(set => set.IsKnown).Select(set => set.Value.Start.ToString()).ToList();
        var people = act.People.Is(out var count) ? $", {count} on stage" : "";
        return $"{act.Name}{people}{(sets.Count > 0 ? $", {(sets.Count == 1 ? "set" : "sets")} {string.Join(" and ", sets)}" : "")}";
    }

    private static IEnumerable<PairView> Facts(Stage stage, Cells cells)
    {
        yield return new PairView("Deck", cells.Of(stage.Size));
        yield return new PairView("Height", cells.Of(stage.Height));
        if (stage.Steps is { } steps)
        {
            yield return new PairView("Steps", cells.Of(steps.Place));
        }

        if (stage.Rails is not null)
        {
            yield return new PairView("Rails", cells.Of(stage.Rails));
        }

        if (stage.DownstageEdge is not null)
        {
            yield return new PairView("Front edge", cells.Of(stage.DownstageEdge));
        }
    }

    private static string Where(Placed thing, Speech speech)
    {
        var side = thing.Spot.X < 0 ? Side.StageRight : Side.StageLeft;
        var place = new Place.Measured(Length.FromMeters(Math.Abs(thing.Spot.X)), side, Length.FromMeters(thing.Spot.Y), Of: null);
        return PlaceWords.Of(place, speech);
    }
}
