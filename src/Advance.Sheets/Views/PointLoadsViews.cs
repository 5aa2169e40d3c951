using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Wording;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the letter of point loads.</summary>
internal sealed class PointLoadsViews
{
    private readonly Plan plan;
    private readonly Speech speech;
    private readonly Cells cells;
    private readonly RiggingCells rigging;

    private PointLoadsViews(Plan plan)
    {
        this.plan = plan;
        speech = Speech.Of(plan.Brief.Company.Units);
        cells = new Cells(plan);
        rigging = new RiggingCells(plan, cells);
    }

    /// <summary>Null where nothing hangs.</summary>
    public static PointLoadsView? Of(Plan plan) => plan.Rigging.Trusses.Count + plan.Rigging.Hangs.Count == 0 ? null : new PointLoadsViews(plan).View();

    private PointLoadsView View()
    {
        var hung = plan.Rigging;
        var points = new PointRows(plan, cells, rigging);
        var rows = new HungRows(plan, cells, rigging);
        return new PointLoadsView(
            [.. Head()],
            [.. Basis()],
            [.. hung.Points.SelectMany(points.Of)],
            [.. hung.Beams.Select(BeamOf)],
            [.. Roof()],
            [.. Assumed()],
            FindingViews.Heavy(plan, finding => FindingViews.IsOf(finding, "rigging") && (FindingViews.IsAt(finding, "rigging/point") || FindingViews.IsAt(finding, "rigging/beam") || FindingViews.IsAt(finding, "rigging/bay") || FindingViews.IsAt(finding, "rigging/bridle") || FindingViews.IsAt(finding, "rigging/roof"))),
            Cells.Head(hung.Hangs.Aggregate(hung.Trusses.Aggregate(Doubts.None, (sum, truss) => sum.With(truss.RestsOn)), (sum, hang) => sum.With(hang.RestsOn))))
        {
            Bays = [.. hung.Bays.Select(BayOf)],
            Trusses = [.. hung.Trusses.Select(rows.Of), .. hung.Hangs.Select(rows.Of)],
            Wind = [.. plan.Standing.Cloths.Select(WindOf)],
            IsDrawn = Drawings.RiggingPlotDrawing.Draw(plan) is not null,
            Mass = cells.MassUnit,
            Length = cells.LengthUnit,
            Moment = rigging.MomentUnit,
            Force = rigging.ForceUnit,
            IsMetric = rigging.IsMetric,
            HasSideways = hung.Points.Any(point => PointRows.IsPulled(point)),
            IsPushed = hung.Points.Any(point => point.Pushed is not null),
            HasBridles = hung.Bridles.Count > 0,
            Nowhere = string.Join(", ", hung.Picks.Where(pick => !IsSomewhere(pick)).Select(pick => pick.Name)),
        };
    }

    private bool IsSomewhere(PickPlan pick) => pick.Placed.Pick.Point.Is(out var name)
        && (plan.Rigging.Points.Any(point => Same(point.Point.Name, name)) || plan.Rigging.Bridles.Any(bridle => Same(bridle.Name, name)) || plan.Rigging.Trusses.Any(truss => Same(truss.Name, name)));

    private static bool Same(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);

    private IEnumerable<PairView> Head()
    {
        var (gig, venue, company, _) = plan.Brief;
        var contact = venue.Contacts.Count > 0 ? $", {venue.Contacts[0].Name}, {venue.Contacts[0].Role}" : "";
        yield return new PairView("To", Cell.Of((venue.Name + contact).TrimStart(',', ' ')));
        var manager = gig.People.FirstOrDefault(DaySheetViews.IsManager);
        var from = string.Join(", ", new[] { company.Name, manager?.Name ?? "", manager?.Phone?.Or("") ?? "" }.Where(part => part.Length > 0));
        yield return new PairView("From", Cell.Of(from));
        yield return new PairView("Show", Cell.Of(gig.Title));
        yield return new PairView("Days", Cell.Of(gig.Days.Count > 0 ? string.Join(", ", gig.Days.Select(day => ScheduleDays.NameOf(day, plan))) : plan.ShowDate is { } date ? Speech.Date(date) : "TBC"));
        yield return new PairView("Hall", Cell.Of(string.Join(", ", new[] { venue.Name, venue.Address }.Where(part => part.Length > 0))));
        var rigger = gig.People.FirstOrDefault(person => person.Does.Contains("rigg", StringComparison.OrdinalIgnoreCase));
        yield return new PairView("Competent rigger", Cell.Of(rigger?.Name ?? "not named yet"));
        foreach (var hours in RigHours.Of(plan, cells))
        {
            yield return hours;
        }
    }

    private IEnumerable<PairView> Basis()
    {
        var policies = plan.Brief.Company.Policies.Rigging;
        if (plan.Brief.Venue.Datum.Length > 0)
        {
            yield return new PairView("The venue measures from", Cell.Of(plan.Brief.Venue.Datum));
        }

        var isMoved = plan.Stage.Datum is { } datum && (datum.X != 0 || datum.Y != 0);
        if (isMoved)
        {
            yield return new PairView("The stage", StageCell());
        }

        yield return new PairView("Axes", Cell.Of($"x to stage left of {(isMoved ? "that, minus to stage right; y upstage of it" : "the centre line, minus to stage right; y upstage of the downstage edge")}; heights above the floor. Stage left is the left of somebody on stage who faces the audience. Bearing clockwise from upstage, 90° to stage left."));
        var moving = plan.Rigging.Trusses.Select(truss => truss.UnevenMoving.Value).Concat(plan.Rigging.Hangs.Select(hang => hang.UnevenMoving?.Value)).Max();
        var uneven = moving is { } most ? $", and by up to {rigging.Off(most.Meters).Text} {rigging.SmallUnit} while it moves" : "";
        yield return new PairView("Cases", Cell.Of($"all hoists level, and each pattern of high and low by up to {rigging.Off(AtRest()).Text} {rigging.SmallUnit} at rest{uneven}; the worst counts. Moving: with a dynamic factor of {Numbers.Plain(policies.DynamicFactor, 2)}."));
        yield return new PairView("Weights", Cell.Of(Weights()));
    }

    private Cell StageCell()
    {
        var edge = plan.Stage.Datum!.Value;
        return Cell.Of($"the middle of its downstage edge is at x {rigging.Length(-edge.X).Text}, y {rigging.Length(-edge.Y).Text} {cells.LengthUnit}") with { Tbc = plan.Brief.Gig.Stages[0].DownstageEdge?.Doubt is { } doubt ? cells.Note(doubt) : null };
    }

    private double AtRest() => plan.Rigging.Trusses.Where(truss => truss.Study is not null).SelectMany(truss => truss.Study!.AtRest.States)
        .SelectMany(state => state.Case.Offsets.Select(Math.Abs)).DefaultIfEmpty(plan.Brief.Company.Policies.Rigging.Uneven.Meters).Max();

    private string Weights()
    {
        var loads = plan.Rigging.Trusses.SelectMany(truss => truss.Loads).Concat(plan.Rigging.Hangs.SelectMany(hang => hang.Loads)).ToList();
        var margin = plan.Brief.Company.Policies.WeightMargin;
        var parts = new[] { (Known.Weighed, "weighed"), (Known.Maker, "from makers"), (Known.Stated, "as told"), (Known.Estimated, "guessed") }
            .Select(one => (Count: loads.Count(load => load.How == one.Item1), Words: one.Item2, Margin: margin.On(one.Item1)))
            .Where(one => one.Count > 0)
            .Select(one => one.Margin > 0 ? $"{one.Count} {one.Words} with {Numbers.Plain(one.Margin, 1)} % on top" : $"{one.Count} {one.Words}");
        var mixed = loads.Count(load => load.How is null);
        return string.Join(", ", [.. parts, .. mixed > 0 ? new[] { $"{mixed} a sum of several or unknown" } : []]) + "; hoists, chain and gear are in what a point carries.";
    }

    private Cell WindOf(ClothPlan cloth)
    {
        var doubts = cloth.Push.RestsOn.With(cloth.Limit.RestsOn);
        var words = cloth.Push.Value is null || cloth.Limit.Value is null
            ? $"{cloth.What} on {cloth.On}: what wind does to it cannot be worked out, as nobody says what wind sees of it or how strong it is."
            : $"{cloth.What} on {cloth.On}: wind pushes it sideways with {rigging.Shear(cloth.Push).Text} {rigging.ForceUnit} in the most wind that it hangs in; it is down before a gust of {cells.WithUnit(cloth.Limit).Text}.";
        return Cell.Of(words) with { Tbc = cells.NoteOf(doubts) };
    }

    private PointLoadsView.Beam BeamOf(BeamPlan beam) => new(
        Cell.Of(beam.Beam.Name) with { Strong = true },
        Cell.Of(string.Join(", ", plan.Rigging.Points.Where(point => point.Point.Beam is { IsKnown: true } on && Same(on.Value, beam.Beam.Name)).Select(point => point.Point.Name).Concat(beam.Beam.Others.Select(other => other.What)))),
        rigging.Mass(beam.All) with { Strong = true },
        rigging.Moment(beam.Moment) with { Strong = true },
        rigging.Moment(beam.MomentAllowed),
        RiggingCells.Share(beam.Moment, beam.MomentAllowed, moment => moment.NewtonMeters),
        rigging.Shear(beam.Shear) with { Strong = true },
        rigging.Shear(beam.ShearAllowed),
        RiggingCells.Share(beam.Shear, beam.ShearAllowed, force => force.Newtons));

    private PointLoadsView.Bay BayOf(BayPlan bay) => new(
        Cell.Of(bay.Bay.Name) with { Strong = true },
        Cell.Of(string.Join(", ", bay.Points.Select(point => point.Point.Name))),
        rigging.Mass(bay.All) with { Strong = true },
        rigging.Weight(bay.All),
        rigging.Mass(bay.Limit),
        RiggingCells.Share(bay.All, bay.Limit));

    private IEnumerable<PairView> Roof()
    {
        if (plan.Rigging.Roof is { } roof)
        {
            var weight = rigging.IsMetric && roof.Value is not null ? $", {rigging.Weight(roof).Text} kN" : "";
            var all = cells.WithUnit(roof);
            yield return new PairView("On all points, at rest", all with { Text = all.Text + weight, Strong = true });
            var limit = plan.Brief.Venue.RoofLimit;
            yield return new PairView("The roof may carry", limit is null ? new Cell("not told") { Verdict = Paper.Tree.Verdict.CannotBeJudged } : cells.Of(limit));
            if (limit is { } given)
            {
                var share = RiggingCells.Share(roof, Figure.From(given));
                yield return new PairView("Of that", share.Value is null ? share : share with { Text = $"{share.Text} %" });
            }
        }
    }

    private IEnumerable<string> Assumed()
    {
        yield return "Each point is taken to bear straight down; sideways only what stands in its columns.";
        yield return plan.Standing.Site.IsOpenAir == true
            ? "Wind is reckoned on truss, fixtures, cloths and hangs, to whichever side is worse, each cloth up to the gust that it is down before; not on the roof and not on chains."
            : "No wind.";
        yield return "Loads are at rest or moved by hoists at the speeds of the hoist table; no people, no emergency stop harder than the dynamic factor. If it catches: one load on the point catches and its hoist pulls until its limiter slips, all else at rest.";
        yield return plan.Rigging.Points.Any(point => point.Point.Stiffness is not null)
            ? "Points give as the venue has told; those of which it has told nothing are taken as stiff."
            : "Points are taken as stiff; where they give differently, hoists share differently.";
        if (plan.Rigging.Bays.Any(bay => bay.Bay.Limit.IsKnown))
        {
            yield return "A bay carries, besides ours, what others have hung on its beams as far as it is told here, and nothing else.";
        }

        if (plan.Rigging.Beams.Count > 0)
        {
            yield return "Beams rest on their two ends and carry, besides ours, what stands in their row and nothing else.";
        }
    }
}
