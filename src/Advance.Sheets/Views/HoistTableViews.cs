using Advance.Domain.Facts;
using Advance.Domain.Findings;
using Advance.Domain.Gigs;
using Advance.Domain.Wording;
using Advance.Planning;
using UnitsNet;

namespace Advance.Sheets.Views;

/// <summary>Makes the hoist table.</summary>
internal sealed class HoistTableViews
{
    private readonly Plan plan;
    private readonly Speech speech;
    private readonly Cells cells;
    private readonly RiggingCells rigging;
    private readonly HoistRows rows;
    private readonly PartRows parts;

    private HoistTableViews(Plan plan)
    {
        this.plan = plan;
        speech = Speech.Of(plan.Brief.Company.Units);
        cells = new Cells(plan);
        rigging = new RiggingCells(plan, cells);
        rows = new HoistRows(plan.Rigging, cells, rigging, speech);
        parts = new PartRows(plan, rigging);
    }

    /// <summary>Null where nothing hangs.</summary>
    public static HoistTableView? Of(Plan plan)
    {
        var makes = new HoistTableViews(plan);
        var trusses = plan.Rigging.Trusses;
        var hangs = plan.Rigging.Hangs;
        return trusses.Count + hangs.Count == 0 ? null : new HoistTableView(
            [.. trusses.Select(makes.ViewOf)],
            makes.cells.MassUnit,
            makes.cells.LengthUnit,
            makes.rigging.SmallUnit,
            Cells.Head(hangs.Aggregate(trusses.Aggregate(Doubts.None, (sum, truss) => sum.With(truss.RestsOn)), (sum, hang) => sum.With(hang.RestsOn))))
        {
            Hangs = [.. hangs.SelectMany(hang => hang.Picks.Select(pick => makes.rows.Of(hang, pick)))],
            Kinds = [.. new HoistKindRows(plan.Rigging, makes.cells, makes.rigging).Rows],
            HasUnweighed = trusses.SelectMany(truss => truss.Loads).Concat(hangs.SelectMany(hang => hang.Loads)).Any(load => load.How is not Known.Weighed),
            NeedsEngineer = trusses.Any(truss => truss.Study is null || truss.Placed.Truss.Shape.Length > 0) || hangs.Any(hang => hang.State is null),
        };
    }

    private HoistTableView.Truss ViewOf(TrussPlan truss)
    {
        var (level, over) = rows.Tightest(truss);
        return new HoistTableView.Truss(
            truss.Name,
            [.. Facts(truss)],
            FindingViews.Heavy(plan, finding => IsAbout(finding, truss)),
            [.. LoadRows.Of(truss, rigging)],
            [.. Forces(truss)],
            [.. truss.Picks.Select((pick, index) => rows.Of(truss, pick, index))])
        {
            Level = level,
            Over = over,
            IsFree = truss.Tolerances.Count > 0 && level.Length == 0 && truss.Picks.All(plan.Rigging.IsBounded),
            Again = speech.Say(plan.Brief.Company.Policies.Rigging.LevelEvery),
            Shares = truss.Picks.Count > 2,
            Parts = [.. parts.Of(truss)],
            Legs = [.. parts.LegsOf(truss)],
            HasBareLegs = parts.CountsNoShackles(truss),
            HasOffset = truss.Loads.Any(load => load.Offset != 0),
            NotCounted = string.Join(", ", truss.Picks.Where(pick => !plan.Rigging.IsBounded(pick)).Select(pick => pick.Name)),
        };
    }

    private static bool IsAbout(Finding finding, TrussPlan truss) => FindingViews.IsOf(finding, "rigging") && FindingViews.IsAt(finding, truss.Address.Text);

    private IEnumerable<PairView> Facts(TrussPlan truss)
    {
        var (placed, written) = (truss.Placed, truss.Placed.Truss);
        var name = placed.Kind?.Name ?? written.Item.Or("");
        yield return new PairView("Made of", placed.Kind is null && name.Length == 0 ? cells.Of(written.Item) : Cell.Of($"{placed.Sections.Count} × {name}"));
        yield return new PairView("Length", cells.Of(written.Length));
        yield return new PairView("Trim, lower chord", TrimOf(truss));
        yield return new PairView("Middle", MiddleOf(written));
        if (written.Apex is { } up)
        {
            yield return new PairView("Apex", cells.Of(up.Select(way => way == Domain.Stocks.Apex.Up ? "up" : "down")));
        }

        yield return new PairView("All that hangs", cells.WithUnit(truss.Weight) with { Strong = true });
        yield return new PairView("Centre of gravity", Centre(truss));
        yield return new PairView("People below", Cell.Of(BelowWords(written)) with { Tbc = written.Below?.Doubt is { } doubt ? cells.Note(doubt) : null });
        yield return new PairView("Reckoned uneven", Uneven(truss));
        yield return new PairView("Dynamic factor", Cell.Of(Numbers.Plain(plan.Brief.Company.Policies.Rigging.DynamicFactor, 2)));
        yield return new PairView("Secondary", written.Secondary is { } held ? cells.Of(held) : Cell.Of("not said"));
        yield return new PairView("Control", Cell.Of(Groups(truss)));
        if (HoistRows.SlungAlike(truss) is { Length: > 0 } slung)
        {
            yield return new PairView("Slings", Cell.Of(slung));
        }

        yield return new PairView("Group stop", written.HasGroupStop is { } stop ? cells.Of(stop) : Cell.Of("not said"));
    }

    // All of a group by one button.
    private static string Groups(TrussPlan truss)
    {
        var groups = truss.Picks.Where(pick => pick.Placed.Pick.Group.Length > 0).GroupBy(pick => pick.Placed.Pick.Group, StringComparer.Ordinal).ToList();
        return groups.Count == 0 ? "in which groups is not said" : string.Join("; ", groups.Select(group => $"{group.Key}: {string.Join(", ", group.Select(pick => pick.Name))}"));
    }

    private Cell MiddleOf(HungTruss truss)
    {
        var cell = cells.Of(truss.Place);
        return truss.RunsUpstage ? cell with { Text = $"{cell.Text}, runs upstage".TrimStart(',', ' ') } : cell;
    }

    private Cell TrimOf(TrussPlan truss)
    {
        var written = truss.Placed.Truss.Trim;
        var cell = cells.WithUnit(truss.Placed.Trim);
        var said = written.Is(out var trim) && trim.Above is { } above && above != Domain.Places.HeightFrom.Floor ? $" · {speech.Say(trim.Height)} above {above}" : "";
        return truss.Placed.Trim.Value is null ? cell : cell with { Text = $"{cell.Text} above floor{said}" };
    }

    private Cell Centre(TrussPlan truss)
    {
        var cell = cells.WithUnit(truss.Centre);
        var side = truss.Offset.Value is { } off && Math.Abs(off.Meters) > 0.0005 ? $", {speech.Say(off)} off its centre line" : "";
        var inside = truss.IsInside == false ? ", outside its picks" : "";
        return truss.Centre.Value is null ? cell : cell with { Text = $"at {cell.Text}{side}{inside}", Verdict = truss.IsInside == false ? Paper.Tree.Verdict.Fails : cell.Verdict };
    }

    private static string BelowWords(HungTruss truss) => truss.Below is { IsKnown: true } below
        ? below.Value switch
        {
            PeopleBelow.Never => "never",
            PeopleBelow.Moving => "also while it moves",
            _ => "while it is at rest",
        }
        : "at rest, as nobody says";

    private Cell Uneven(TrussPlan truss)
    {
        var rest = truss.Study is { } study ? $"{rigging.Off(study.AtRest.States.Max(state => state.Case.Offsets.Max(Math.Abs))).Text} {rigging.SmallUnit} at rest, " : "";
        var moving = truss.UnevenMoving.Value is { } length ? $"{rigging.Off(length.Meters).Text} {rigging.SmallUnit} moving" : "";
        return Cell.Of(rest + moving);
    }

    private IEnumerable<HoistTableView.Force> Forces(TrussPlan truss)
    {
        yield return new($"Sagging, {rigging.MomentUnit}", rigging.Moment(truss.Sagging.Worst), rigging.Moment(truss.Sagging.Allowed), Share(truss.Sagging), rigging.Said(truss.Sagging.Case));
        yield return new($"Hogging, {rigging.MomentUnit}", rigging.Moment(truss.Hogging.Worst), rigging.Moment(truss.Hogging.Allowed), Share(truss.Hogging), rigging.Said(truss.Hogging.Case));
        yield return new($"Shear, {rigging.ForceUnit}", rigging.Shear(truss.Shear.Worst), rigging.Shear(truss.Shear.Allowed), RiggingCells.Share(truss.Shear.Worst, truss.Shear.Allowed, Newtons), rigging.Said(truss.Shear.Case));
        yield return new("Both together", Cell.Blank, Cell.Blank, RiggingCells.Share(truss.Together.Value, truss.Together.RestsOn), truss.Together.Value is null ? "" : "moment and shear in one place");
        if (truss.Sag.Value is { } sag)
        {
            yield return new($"Sags, {rigging.SmallUnit}", rigging.Off(sag.Meters) with { Tbc = truss.Sag.RestsOn.Any ? "" : null }, truss.Span is { } span ? rigging.Small(span.Meters / 200) : Cell.Blank, Cell.Blank, "level; L/200 is where it is worth a note");
        }

        foreach (var force in Sideways(truss.Sideways))
        {
            yield return force;
        }

        yield return new("However uneven", Cell.Blank, Cell.Blank, RiggingCells.Share(truss.BoundUse?.Share, truss.RestsOn), UseWords(truss, truss.BoundUse));
        if (truss.Picks.Count > 1)
        {
            yield return new("One hoist gone", Cell.Blank, Cell.Blank, RiggingCells.Share(truss.GoneUse?.Share, truss.RestsOn), UseWords(truss, truss.GoneUse));
        }
    }

    private IEnumerable<HoistTableView.Force> Sideways(TrussSideways sideways)
    {
        if (!sideways.IsPushed)
        {
            yield break;
        }

        yield return new($"Bent sideways, {rigging.MomentUnit}", rigging.Moment(sideways.Moment), rigging.Moment(sideways.Allowed), RiggingCells.Share(sideways.Moment, sideways.Allowed, moment => moment.NewtonMeters), "by wind, lines and pull-backs");
        if (sideways.Pressed.Value is { Newtons: > 0 })
        {
            yield return new($"Pressed, {rigging.ForceUnit}", rigging.Shear(sideways.Pressed), rigging.Shear(sideways.PressedAllowed), RiggingCells.Share(sideways.Pressed, sideways.PressedAllowed, Newtons), "from end to end, by chains that lean");
        }

        if (sideways.Bowed.Value is { } bow)
        {
            yield return new($"Bows, {rigging.SmallUnit}", rigging.Small(bow.Meters) with { Tbc = sideways.Bowed.RestsOn.Any ? "" : null }, Cell.Blank, Cell.Blank, "sideways, between picks that do not give");
        }

        yield return new("With what hangs", Cell.Blank, Cell.Blank, RiggingCells.Share(sideways.Together.Value, sideways.Together.RestsOn), "moment and shear, sideways and pressed together");
    }

    // What is nothing needs no limit.
    private static Cell Share(TrussForce<Torque> force) => force is { Worst.Value: { NewtonMeters: 0 }, Allowed.Value: null } ? Cell.Number(0, "0") : RiggingCells.Share(force.Worst, force.Allowed, moment => moment.NewtonMeters);

    private static double Newtons(Force force) => force.Newtons;

    private string UseWords(TrussPlan truss, LiftUse? use) => use is null ? "" : $"{rows.PartOf(truss, use)}, {rigging.Said(use.Case.Said)}";
}
