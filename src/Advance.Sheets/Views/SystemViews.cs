using Advance.Domain.Stocks;
using Advance.Domain.Wording;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the system sheets.</summary>
internal sealed class SystemViews
{
    private readonly Plan plan;
    private readonly Speech speech;
    private readonly Cells cells;

    private SystemViews(Plan plan)
    {
        this.plan = plan;
        speech = Speech.Of(plan.Brief.Company.Units);
        cells = new Cells(plan);
    }

    /// <summary>One sheet for each stack, and one for all single boxes; null where there is none.</summary>
    public static SystemsView? Of(Plan plan)
    {
        var views = new SystemViews(plan);
        var stacks = plan.Sound.Stacks.Select(views.ViewOf).ToList();
        var single = stacks.Where(stack => stack is { Boxes.Count: 1, HasPins: false, Lift.IsBlank: true }).ToList();
        var own = stacks.Where(stack => single.Count == 1 || !single.Contains(stack)).Select(stack => new SystemsView.Sheet(stack.Id, stack.Name, [stack], Cell.Blank)).ToList();
        if (single.Count > 1)
        {
            var names = single.Select(stack => stack.Name).ToHashSet(StringComparer.Ordinal);
            own.Add(new SystemsView.Sheet("system-single-boxes", "single boxes", single, views.RestsOn(plan.Sound.Stacks.Where(stack => names.Contains(stack.Name)))));
        }

        return own.Count > 0 ? new SystemsView(own) : null;
    }

    private SystemView ViewOf(StackPlan stack)
    {
        var lift = stack.Lift is { Hands: not 1 } heavy ? Cell.Of($"{heavy.Item} weighs {speech.Say(heavy.Weight.Value!.Value)}") : Cell.Blank;
        var leads = new LeadCells(plan, speech, stack.Boxes.ToDictionary(box => box.Piece.Name, box => $"box {box.Position}"));
        var about = About(stack).ToList();
        return new SystemView(
            $"system-{Slug.Of(stack.Name)}",
            stack.Name,
            Drawings.SystemDrawing.Bands(stack) is not null,
            [.. Facts(stack)],
            [.. stack.Boxes.Reverse().Select(box => BoxOf(stack, box, leads))],
            FindingViews.Heavy(plan, finding => about.Exists(address => FindingViews.IsAt(finding, address))),
            lift,
            HandWords(stack.Lift?.Hands),
            RestsOn([stack]))
        {
            HasPins = stack.Boxes.Any(box => box.Joint is not null),
        };
    }

    private Cell RestsOn(IEnumerable<StackPlan> stacks) =>
        Cells.Head(stacks.Select(stack => stack.RestsOn).Append(plan.Cables.RestsOn).Append(plan.Power.RestsOn).Aggregate((all, more) => all.With(more)));

    // The stack on its side, what is wrong with both of a pair, and the leads that go into its boxes.
    private IEnumerable<string> About(StackPlan stack)
    {
        var boxes = stack.Boxes.Select(box => box.Piece.Name).ToHashSet(StringComparer.Ordinal);
        return plan.Links.Where(link => boxes.Contains(link.To.Port.Device))
            .Select(link => plan.Cables.Of(link.Address)?.Address.Text)
            .OfType<string>()
            .Prepend(stack.Written.Text)
            .Prepend(stack.Address.Text);
    }

    private IEnumerable<PairView> Facts(StackPlan stack)
    {
        var place = cells.Of(stack.Stack.Place);
        yield return new PairView("Stands", place with { Text = $"{(stack.Side is { } side ? SideWords(side) + ", " : "")}{place.Text}{On(stack)}" });
        yield return new PairView("Aim", AimWords.Of(stack.Stack.Aim, plan.Brief.Company.Aim, speech, cells));
        yield return new PairView("Height", cells.WithUnit(stack.Height));
        if (stack.Base.Value is not { Meters: 0 })
        {
            yield return new PairView("Top above floor", cells.WithUnit(stack.Top));
        }

        yield return new PairView("Weight", cells.WithUnit(stack.Weight));
        if (stack.Lift is { } lift)
        {
            yield return new PairView("Hands", Cell.Of($"{HandWords(lift.Hands) switch { "" => "forks or wheels", var hands => hands }} for {lift.Item}, {speech.Say(lift.Weight.Value!.Value)}"));
        }

        yield return new PairView("Strap", Cell.Of(stack.Stack.Strap is { } strap ? $"{strap.Count} × {strap.Item}" : "none planned"));
        foreach (var pair in new SoundFacts(plan, speech, cells).Of(stack))
        {
            yield return pair;
        }
    }

    private SystemView.Box BoxOf(StackPlan stack, StackedBox box, LeadCells leads)
    {
        var driven = plan.Drive.Of(box.Piece.Address);
        var (top, bottom) = Drawings.SystemDrawing.Bands(stack) is { } bands ? bands[box.Position - 1] : default;
        return new SystemView.Box(
            Cell.Number(box.Position) with { Strong = true },
            Cell.Of(box.Piece.Name) with { Strong = true },
            Cell.Of(box.Piece.Item),
            Cell.Of(Way(box)) with { Strong = true },
            JoinedBelow(stack, box),
            Cell.Of(box.Joint is { Pins: > 0 } joint ? $"{joint.Pins} pins" : ""),
            leads.From(driven?.In),
            leads.To(driven?.Out ?? []),
            leads.MainsIn(box.Piece.Address) is { IsBlank: false } mains ? mains : box.Piece.Kind is { Mains: null } ? Cell.Blank : new Cell("no circuit") { Verdict = Paper.Tree.Verdict.CannotBeJudged },
            leads.MainsOut(box.Piece.Address),
            Network(box),
            Cell.Of(driven is null ? "" : new SettingWords(speech).Of(driven)),
            top,
            bottom);
    }

    private Cell JoinedBelow(StackPlan stack, StackedBox box)
    {
        if (box.Joint is { } joint)
        {
            return Cell.Of($"{joint.Pieces} × {joint.Kind.Id}");
        }

        if (box.Position == 1)
        {
            var under = plan.Pieces.Where(piece => IsCompanion(piece, box)).GroupBy(piece => piece.Item, StringComparer.Ordinal).Select(group => $"{group.Count()} × {group.Key}");
            return Cell.Of(string.Join(", ", ["none, stands" + On(stack), .. under]));
        }

        return stack.Interfaces.First(joint => joint.Upper.Position == box.Position) is { WantsJoint: true }
            ? new Cell("no joint known") { Verdict = Paper.Tree.Verdict.CannotBeJudged }
            : Cell.Of("none, stands on it");
    }

    private static bool IsCompanion(Piece piece, StackedBox box) =>
        piece.Why is Need.GoesWith with && with.Other == box.Piece.Address && piece.Kind?.Role is not (Role.Joint or Role.Cable);

    private Cell Network(StackedBox box) => plan.Drive.Units.FirstOrDefault(unit => unit.Address == box.Piece.Address) is { Network: { } address } unit
        ? Cell.Of(address.ToString()) with { Tbc = cells.NoteOf(unit.RestsOn) }
        : Cell.Blank;

    private static string Way(StackedBox box) =>
        (box.IsUpsideDown ? "upside-down" : "upright") + (box.IsRearFacing ? ", front to the rear" : "");

    private static string On(StackPlan stack) => stack.On switch
    {
        Footing.Floor => " on the floor",
        Footing.Deck => " on the deck",
        _ => "",
    };

    private static string SideWords(Domain.Places.Side side) => side == Domain.Places.Side.StageRight ? "SR" : "SL";

    private static string HandWords(int? hands) => hands switch
    {
        1 => "one",
        2 => "two",
        4 => "four",
        { } other => Cell.Number(other).Text,
        null => "",
    };
}
