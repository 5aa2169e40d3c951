using System.Globalization;
using Advance.Domain.Figures;
using Advance.Domain.Venues;
using Advance.Domain.Wording;
using Advance.Planning;
using UnitsNet;

namespace Advance.Sheets.Views;

/// <summary>The rows of the letter of point loads: each point, and under it the legs of bridles that pull at it.</summary>
internal sealed class PointRows(Plan plan, Cells cells, RiggingCells rigging)
{
    /// <summary>The point and its legs.</summary>
    public IEnumerable<PointLoadsView.Point> Of(PointPlan point)
    {
        yield return PointOf(point);
        foreach (var bridle in plan.Rigging.Bridles)
        {
            foreach (var leg in bridle.Legs.Where(leg => Same(leg.Point, point.Point.Name)))
            {
                yield return LegOf(bridle, leg);
            }
        }
    }

    private PointLoadsView.Point PointOf(PointPlan point)
    {
        var written = point.Point;
        return new PointLoadsView.Point(Cell.Of(written.Name) with { Strong = true }, IsLeg: false)
        {
            X = PlaceOf(point, spot => spot.X - rigging.Origin.X),
            Y = PlaceOf(point, spot => spot.Y - rigging.Origin.Y),
            Height = rigging.Length(written.Height),
            Hangs = Cell.Of(string.Join(", ", point.Hangs)),
            Beam = written.Beam is { IsKnown: true } beam ? $"on {beam.Value}" : "",
            Worst = WorstOf(point),
            AtRest = rigging.Mass(point.AtRest) with { Strong = true },
            AtRestWeight = rigging.Weight(point.AtRest),
            Moving = rigging.Mass(point.Moving),
            MovingWeight = rigging.Weight(point.Moving),
            Snag = point.Snag is { } caught ? rigging.Mass(caught, caught.AtMost(point.Point.Snag is { } once ? Figure.From(once) : point.Limit)) : Cell.Blank,
            Sideways = point.Sideways is { Value.Kilograms: 0, RestsOn.Any: false } || !IsPulled(point) ? Cell.Blank : rigging.Mass(point.Sideways, point.Pushed is null ? point.SidewaysHolds : Verdict.Holds),
            Pushed = point.Pushed is { } pushed ? rigging.Mass(pushed, point.SidewaysHolds) : Cell.Blank,
            Bearing = IsPulled(point) && point.Bearing is { } bearing ? Degrees(bearing) with { Tbc = point.Sideways.RestsOn.Any ? "" : null } : Cell.Blank,
            Limit = rigging.Mass(point.Limit),
            RatedFor = RatedFor(point),
            Share = RiggingCells.Share(point.Counts, point.Limit),
        };
    }

    // A leg pulls along itself; what it pulls straight down and sideways are parts of that.
    private PointLoadsView.Point LegOf(BridlePlan bridle, BridleLegPlan leg) => new(Cell.Of($"leg of {bridle.Name}"), IsLeg: true)
    {
        Hangs = Cell.Of(string.Create(CultureInfo.InvariantCulture, $"{LengthOf(leg.Length)} long{MadeOf(leg)}, {leg.FromHorizontal:0.#}° from level{(leg.IsSlack ? ", slack" : "")}; pulls {rigging.Mass(leg.Pull).Text} {cells.MassUnit} moving")) with { Tbc = bridle.Placed.RestsOn.With(leg.Pull.RestsOn).Any ? "" : null },
        AtRest = rigging.Mass(leg.Down),
        AtRestWeight = rigging.Weight(leg.Down),
        Sideways = rigging.Mass(leg.Sideways),
        Bearing = Degrees(SidewaysPull.Bearing(leg.TowardsX, leg.TowardsY)) with { Tbc = bridle.Placed.RestsOn.Any ? "" : null },
    };

    private static string MadeOf(BridleLegPlan leg) => leg.Placed.Gear.Count > 0 ? $" ({GearWords.Of(leg.Placed.Gear, leg.Placed.Made)})" : "";

    /// <summary>Whether it is pulled sideways more than rounding leaves.</summary>
    public static bool IsPulled(PointPlan point) => point.Sideways.Value is not { Kilograms: < 0.5 };

    // Of straight picks; what comes through a bridle is told under it.
    private string WorstOf(PointPlan point) => string.Join("; ", plan.Rigging.Picks
        .Where(pick => point.Hangs.Contains(pick.Name, StringComparer.Ordinal) && pick.AtRestCase is not null)
        .Select(pick => $"{rigging.Said(pick.AtRestCase!)}: {HungOf(pick)}").Distinct(StringComparer.Ordinal));

    // What hangs, and what it hangs by: together what it asks of its point.
    private string HungOf(PickPlan pick) => pick is { AtRest.Value: { } hangs, PointAtRest.Value: { } all }
        ? $"{rigging.Mass(pick.AtRest).Text} {cells.MassUnit} hung, {rigging.Mass(new Figure<Mass>(all - hangs, pick.PointAtRest.RestsOn, Reason.Derived.It)).Text} hoist, chain and gear"
        : "what hangs is not known";

    private Cell PlaceOf(PointPlan point, Func<Spot, double> of)
    {
        var cell = rigging.Length(point.Spot is { } spot ? of(spot) : null);
        return cell with { Tbc = point.Point.Place.Doubt is null ? null : "" };
    }

    private Cell RatedFor(PointPlan point)
    {
        var words = point.Point.IsForMoving ? "moving" : "at rest";
        var by = point.Point.RatedBy is { } rated ? cells.Of(rated) : Cell.Blank;
        var across = (point.Point.Sideways, point.Point.OffPlumb) switch
        {
            ({ } most, _) => most.IsKnown ? $", sideways {cells.Of(most).Text}" : ", sideways not told",
            (_, { } lean) => $", {cells.Of(lean).Text} off plumb",
            _ => "",
        };
        var along = point.Point.Bearing is { } line ? line.Is(out var way) ? $" along {Numbers.Plain(way.Degrees, 0)}°" : " along a line not told" : "";
        var made = point.Point.Made is { IsKnown: true } kind ? $"{kind.Value.Words()}, " : "";
        return Cell.Of($"{made}{words}{across}{along}, {(by.Text.Length > 0 ? by.Text : "rated by nobody named")}") with { Tbc = point.Point.Limit.Doubt is { } doubt ? cells.Note(doubt) : by.Tbc };
    }

    private string LengthOf(double metres) => $"{rigging.Length(metres).Text} {cells.LengthUnit}";

    private static Cell Degrees(double degrees) => Cell.Number(degrees, Numbers.Plain(degrees, 0));

    private static bool Same(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);
}
