using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Each truss and hang of the letter of point loads, with what lifts it.</summary>
internal sealed class HungRows(Plan plan, Cells cells, RiggingCells rigging)
{
    private readonly Domain.Wording.Speech speech = Domain.Wording.Speech.Of(plan.Brief.Company.Units);

    /// <summary>One truss.</summary>
    public PointLoadsView.Hung Of(TrussPlan truss)
    {
        var (placed, written) = (truss.Placed, truss.Placed.Truss);
        return new PointLoadsView.Hung(
            Cell.Of(truss.Name) with { Strong = true },
            Cell.Of($"{placed.Sections.Count} × {placed.Kind?.Name ?? written.Item.Or("TBC")}, {cells.Of(written.Length).Text}") with { Tbc = written.Length.Doubt is null ? null : "" },
            rigging.Length(placed.Trim.Value?.Meters) with { Tbc = placed.Trim.RestsOn.Any ? "" : null },
            rigging.Mass(truss.Weight) with { Strong = true },
            Cell.Of(HoistsOf(truss.Picks)) with { Tbc = cells.NoteOf(DoubtsOf(truss.Picks)) },
            Cell.Of(BelowOf(written.Below)) with { Tbc = written.Below?.Doubt is { } open ? cells.Note(open) : null },
            written.Secondary is { } held ? cells.Of(held) : Cell.Of("not said"));
    }

    /// <summary>One hang; its trim is that of its lowest edge.</summary>
    public PointLoadsView.Hung Of(HangPlan hang)
    {
        var picks = hang.Picks.Select(pick => pick.Pick).ToList();
        var boxes = hang.Stack.Boxes.GroupBy(box => box.Piece.Item, StringComparer.Ordinal).Select(alike => $"{alike.Count()} × {alike.First().Piece.Kind?.Name ?? alike.Key}");
        var flown = hang.Placed.Flown;
        var below = flown.Below;
        return new PointLoadsView.Hung(
            Cell.Of(hang.Name) with { Strong = true },
            Cell.Of($"Hang, {string.Join(", ", boxes)}"),
            rigging.Length(hang.Bottom.Value?.Meters) with { Tbc = hang.Bottom.RestsOn.Any ? "" : null },
            rigging.Mass(hang.Weight) with { Strong = true },
            Cell.Of(HoistsOf(picks)) with { Tbc = cells.NoteOf(DoubtsOf(picks)) },
            Cell.Of(BelowOf(below)) with { Tbc = below?.Doubt is { } open ? cells.Note(open) : null },
            flown.Secondary is { } held ? cells.Of(held) : Cell.Of("not said"));
    }

    private string HoistsOf(IEnumerable<PickPlan> picks) =>
        string.Join("; ", picks.GroupBy(pick => (pick.Placed.Hoist?.Item, pick.Placed.Pick.BodyUp)).Select(alike => AlikeOf([.. alike])));

    private static Doubts DoubtsOf(IEnumerable<PickPlan> picks) => picks.Aggregate(Doubts.None, (sum, pick) => sum
        .With(Doubts.Of(pick.Placed.Pick.Hoist?.Doubt))
        .With(pick.Placed.Hoist?.Kind?.Hoist is { } hoist
            ? Doubts.Of(hoist.Lifts.Doubt).With(Doubts.Of(hoist.Holds?.Doubt)).With(Doubts.Of(hoist.Speed?.Doubt)).With(Doubts.Of(hoist.Limiter?.Doubt)).With(Doubts.Of(hoist.Brakes?.Doubt))
            : Doubts.None));

    private string AlikeOf(IReadOnlyList<PickPlan> picks)
    {
        var (count, first) = (picks.Count, picks[0].Placed);
        return first.Hoist is not { } piece ? $"{count} dead hung"
            : string.Join(", ", new[] { $"{count} × {piece.Kind?.Name ?? piece.Item}", SpeedOf(piece.Kind?.Hoist), $"body {(first.Pick.BodyUp ? "up" : "down")}", Rated(piece.Kind?.Hoist) }.Where(part => part.Length > 0));
    }

    private string SpeedOf(Hoist? hoist) => hoist?.Speed is { IsKnown: true } fast ? rigging.PerMinute(fast.Value) : "speed not known";

    // By who is below: that is what its class says.
    private string Rated(Hoist? hoist)
    {
        if (hoist is null)
        {
            return "";
        }

        var lifts = hoist.Lifts.Is(out var most) ? $"lifts {speech.Say(most)}" : "what it lifts is not known";
        var holds = hoist.Holds is { } over ? over.Is(out var still) ? $"{(hoist.Lifts.Is(out var same) && same.Kilograms == still.Kilograms ? ", as much" : $", holds {speech.Say(still)}")} over people" : ", what it holds over people is not known" : ", may not hold over people";
        var slips = hoist.Limiter is { IsKnown: true } limiter ? $", limiter {speech.Say(limiter.Value)}" : ", its limiter is not known";
        var brakes = hoist.Brakes is { IsKnown: true } many ? many.Value > 1 ? ", two brakes" : ", one brake" : "";
        return lifts + holds + slips + brakes;
    }

    private static string BelowOf(Given<PeopleBelow>? said) => said is { IsKnown: true } below
        ? below.Value switch { PeopleBelow.Never => "nobody", PeopleBelow.Moving => "people, also moving", _ => "people, at rest" }
        : "people, at rest, as nobody says";
}
