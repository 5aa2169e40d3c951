using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Wording;
using Advance.Planning;
using UnitsNet;

namespace Advance.Sheets.Views;

/// <summary>Makes the hang sheets.</summary>
internal sealed class HangViews
{
    private readonly Plan plan;
    private readonly Speech speech;
    private readonly Cells cells;
    private readonly RiggingCells rigging;

    private HangViews(Plan plan)
    {
        this.plan = plan;
        speech = Speech.Of(plan.Brief.Company.Units);
        cells = new Cells(plan);
        rigging = new RiggingCells(plan, cells);
    }

    /// <summary>One for each hang; null where there is none.</summary>
    public static HangsView? Of(Plan plan)
    {
        var views = new HangViews(plan);
        return plan.Rigging.Hangs.Count > 0 ? new HangsView([.. plan.Rigging.Hangs.Select(views.ViewOf)]) : null;
    }

    private HangView ViewOf(HangPlan hang)
    {
        var boxes = new HangBoxCells(plan, cells, rigging, speech, hang);
        List<HangView.Box> rows = [.. hang.Boxes.Select(boxes.Of)];
        return new HangView(
            $"hang-{Slug.Of(hang.Name)}",
            hang.Name,
            hang.State is not null,
            [.. Facts(hang)],
            rows,
            [.. hang.Picks.Select(pick => PickOf(hang, pick))],
            FindingViews.Heavy(plan, finding => About(hang).Exists(address => FindingViews.IsAt(finding, address))),
            Cells.Head(hang.RestsOn.With(hang.Stack.RestsOn).With(plan.Cables.RestsOn).With(plan.Power.RestsOn)))
        {
            Holes = string.Join("; ", hang.Holes.Where(hole => hole.Tilt.Value is not null).Select(hole => $"hole {hole.Hole.Name}: {TiltWords.Of(hole.Tilt.Value)}")),
            HasForces = hang.Boxes.Any(box => box.Rear.Value is not null),
            HasLimits = hang.Boxes.Any(box => box.RearLimit.Value is not null || box.FrontLimit.Value is not null),
            HasAddresses = rows.Exists(row => !row.Address.IsBlank),
            HasSettings = rows.Exists(row => !row.Settings.IsBlank),
            HasUnweighed = hang.Loads.Any(load => load.How is not (Known.Weighed or null)),
            HasPlumb = hang.Picks.Any(pick => pick.OffPlumb.Value is not null),
            IsPulled = hang.Placed.Flown.PullBack is not null,
            IsCut = Drawings.HangDrawing.IsCut(hang),
            Mass = cells.MassUnit,
            Length = cells.LengthUnit,
            Force = rigging.ForceUnit,
            IsMetric = rigging.IsMetric,
        };
    }

    // The hang on its side, what is wrong with both of a pair, in rigging and in sound, and the leads that go into its boxes.
    private List<string> About(HangPlan hang)
    {
        var boxes = hang.Stack.Boxes.Select(box => box.Piece.Name).ToHashSet(StringComparer.Ordinal);
        return
        [
            hang.Address.Text,
            hang.Written.Text,
            hang.Stack.Address.Text,
            hang.Stack.Written.Text,
            .. plan.Links.Where(link => boxes.Contains(link.To.Port.Device)).Select(link => plan.Cables.Of(link.Address)?.Address.Text).OfType<string>(),
        ];
    }

    private IEnumerable<PairView> Facts(HangPlan hang)
    {
        var (stack, flown) = (hang.Stack, hang.Placed.Flown);
        var place = cells.Of(stack.Stack.Place);
        var side = stack.Side is { } one ? (one == Domain.Places.Side.StageRight ? "SR, " : "SL, ") : "";
        yield return new PairView(hang.Picks.Count == 2 ? "Middle of its picks" : "Its pick", place with { Text = $"{side}{place.Text}" });
        yield return new PairView("Aim", AimWords.Of(stack.Stack.Aim, plan.Brief.Company.Aim, speech, cells));
        yield return new PairView("Frame", Cell.Of(FrameWords(stack)));
        yield return new PairView("Tilt of the frame", Tilt(hang.Tilt) with { Strong = true });
        yield return new PairView("All that hangs", cells.WithUnit(hang.Weight) with { Strong = true });
        yield return new PairView("Under the frame", UnderFrame(hang));
        yield return new PairView("Lowest edge", AboveFloor(hang.Bottom) with { Strong = true });
        yield return new PairView(hang.Picks.Count == 2 ? "Front hole" : "Hole", AboveFloor(hang.PickHeight));
        yield return new PairView("Hole to lowest edge", cells.WithUnit(hang.Drop));
        if (hang.StaysAbove is { } least)
        {
            yield return new PairView("Stays above", AboveFloor(least));
        }

        if (hang.Picks.Count == 2)
        {
            yield return new PairView("Both picks carry", Cell.Of(hang.LeastTilt.Value is null ? "" : $"from {TiltWords.Of(hang.LeastTilt.Value)} to {TiltWords.Of(hang.MostTilt.Value)}") with { Tbc = cells.NoteOf(hang.LeastTilt.RestsOn), Verdict = hang.LeastTilt.Value is null ? Paper.Tree.Verdict.CannotBeJudged : Paper.Tree.Verdict.Plain });
        }

        if (flown.PullBack is { } pull)
        {
            yield return new PairView("Pulled back", cells.Of(pull.Pull) with { Text = $"{cells.Of(pull.Pull).Text}, {cells.Of(pull.Up).Text} up, to {pull.To}" });
        }

        yield return new PairView("People below", Cell.Of(BelowWords(flown)) with { Tbc = flown.Below?.Doubt is { } doubt ? cells.Note(doubt) : null });
        yield return new PairView("Secondary", flown.Secondary is { } held ? cells.Of(held) : Cell.Of("not said"));
        if (hang.Wind is { } wind)
        {
            var swing = cells.WithUnit(wind.Swing);
            yield return new PairView("In wind", swing with { Text = wind.Swing.Value is null ? swing.Text : $"swings {swing.Text} in {cells.WithUnit(wind.Gust).Text}, pushed by {cells.WithUnit(wind.Push).Text}" });
        }

        foreach (var pair in new SoundFacts(plan, speech, cells).Of(stack))
        {
            yield return pair;
        }
    }

    private static string FrameWords(StackPlan stack) => stack.Frame is { } frame
        ? string.Join(", with ", [frame.Piece.Kind?.Name ?? frame.Piece.Item, .. stack.FixedToFrame.Where(piece => piece.Why is Need.AskedFor).Select(piece => piece.Kind?.Name ?? piece.Item)])
        : "none";

    private Cell UnderFrame(HangPlan hang)
    {
        var cell = cells.WithUnit(hang.UnderFrame);
        var rating = hang.Stack.Frame?.Piece.Kind?.FlyingFrame?.Rating is { } given ? Figure.From(given) : new Figure<Mass>(null, Doubts.None, Reason.Derived.It);
        return cell with { Text = rating.Value is { } most ? $"{cell.Text} of {speech.Say(most)}" : $"{cell.Text}, rating not known", Verdict = RiggingCells.Of(hang.UnderFrame.AtMost(rating)) };
    }

    private Cell Tilt(Figure<Angle> tilt) => tilt.Value is null
        ? new Cell("?") { Verdict = Paper.Tree.Verdict.CannotBeJudged, Tbc = cells.NoteOf(tilt.RestsOn) }
        : cells.WithUnit(tilt) with { Text = TiltWords.Of(tilt.Value) };

    private Cell AboveFloor(Figure<Length> height)
    {
        var cell = cells.WithUnit(height);
        return height.Value is null ? cell : cell with { Text = $"{cell.Text} above floor" };
    }

    private static string BelowWords(Flown flown) => flown.Below is { IsKnown: true } below
        ? below.Value switch
        {
            PeopleBelow.Never => "never",
            PeopleBelow.Moving => "also while it moves",
            _ => "while it is at rest",
        }
        : "at rest, as nobody says";

    private HangView.Pick PickOf(HangPlan hang, HangPickPlan pick)
    {
        var (made, placed) = (pick.Pick, pick.Pick.Placed);
        var part = hang.Weight.Value is { Kilograms: > 0 } all && made.Level.Value is { } level ? level.Kilograms / all.Kilograms : (double?)null;
        return new HangView.Pick(Cell.Of(made.Name) with { Strong = true })
        {
            Hole = pick.Hole is { } hole ? Cell.Of(pick.IsChosen ? $"{hole.Name}, nearest to the tilt" : hole.Name) with { Strong = true } : new Cell("?") { Verdict = Paper.Tree.Verdict.CannotBeJudged },
            Point = cells.Of(placed.Pick.Point) with { Strong = true },
            Hoist = placed.Hoist is { } piece ? Cell.Of($"{piece.Kind?.Name ?? piece.Item}, body {(placed.Pick.BodyUp ? "up" : "down")}") : Cell.Of("hangs dead"),
            Height = rigging.Length(pick.Height.Value?.Meters) with { Tbc = pick.Height.RestsOn.Any ? "" : null },
            Level = rigging.Mass(made.Level) with { Strong = true },
            LevelWeight = rigging.Weight(made.Level),
            Part = RiggingCells.Share(part, made.Level.RestsOn),
            Hook = placed.Hoist is null ? Cell.Blank : rigging.Mass(made.Hoist),
            Rating = placed.Hoist is null ? Cell.Blank : rigging.Mass(made.Rating),
            Share = placed.Hoist is null ? Cell.Blank : RiggingCells.Share(made.Hoist, made.Rating),
            OffPlumb = pick.OffPlumb.Value is null ? Cell.Blank : cells.Amount(pick.OffPlumb, angle => angle.Degrees, 1),
            Notes = Notes(pick),
        };
    }

    private string Notes(HangPickPlan pick)
    {
        var placed = pick.Pick.Placed;
        var gear = string.Join(", ", placed.Gear.GroupBy(piece => piece.Kind?.Name ?? piece.Item, StringComparer.Ordinal).Select(group => group.Count() > 1 ? $"{group.Count()} × {group.Key}" : group.Key));
        var most = pick.Pick.AtRestCase is not { } words || pick.Pick.Moving.Value is null || pick.Pick.Level.Value?.Kilograms == pick.Pick.Moving.Value?.Kilograms ? "" : $"{speech.Say(words)}: {LoadWords(pick.Pick.AtRest)} at rest, {LoadWords(pick.Pick.Moving)} moving";
        var group = placed.Pick.Group.Length > 0 ? $"control {placed.Pick.Group}" : "";
        return string.Join(" · ", new[] { most, gear, group }.Where(part => part.Length > 0));
    }

    private string LoadWords(Figure<Mass> mass) => Drawings.LoadWords.Of(mass, speech);
}
