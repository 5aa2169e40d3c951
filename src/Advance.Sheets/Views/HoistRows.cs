using System.Globalization;
using Advance.Domain.Facts;
using Advance.Domain.Stocks;
using Advance.Domain.Wording;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>The rows of the hoist table, and how far its hooks may be off level.</summary>
internal sealed class HoistRows(RiggingPlan hung, Cells cells, RiggingCells rigging, Speech speech)
{
    /// <summary>One pick of a truss.</summary>
    public HoistTableView.Pick Of(TrussPlan truss, PickPlan pick, int index)
    {
        var hoist = pick.Placed.Hoist?.Kind?.Hoist;
        return Of(pick, truss.Placed.RestsOn, SlungAlike(truss).Length > 0 ? "" : SlungOf(pick.Placed.Pick)) with { High = Off(truss, hoist, index, tolerance => tolerance.Raise), Low = Off(truss, hoist, index, tolerance => tolerance.Drop) };
    }

    /// <summary>One pick of a hang: along it says by which hole.</summary>
    public HoistTableView.Pick Of(HangPlan hang, HangPickPlan pick) =>
        Of(pick.Pick, hang.Stack.RestsOn.With(hang.RestsOn), "") with { Along = pick.Hole is { } hole ? Cell.Of(hole.Name) : new Cell("?") { Verdict = Paper.Tree.Verdict.CannotBeJudged } };

    // How its slings are laid is alike for all of most trusses, and then stands over the table.
    private HoistTableView.Pick Of(PickPlan pick, Doubts where, string slung)
    {
        var placed = pick.Placed;
        return new HoistTableView.Pick(Cell.Of(pick.Name) with { Strong = true })
        {
            Along = rigging.Length(placed.Pick.Along),
            Point = cells.Of(placed.Pick.Point),
            X = rigging.Length(pick.Spot?.X - rigging.Origin.X) with { Tbc = where.Any ? "" : null },
            Y = rigging.Length(pick.Spot?.Y - rigging.Origin.Y) with { Tbc = where.Any ? "" : null },
            Hoist = placed.Hoist is { } piece ? Cell.Of($"{piece.Kind?.Name ?? piece.Item}, body {(placed.Pick.BodyUp ? "up" : "down")}") with { Tbc = placed.Pick.Hoist?.Doubt is { } doubt ? cells.Note(doubt) : null } : Cell.Of("hangs dead"),
            Level = rigging.Mass(pick.Level) with { Strong = true },
            AtRest = rigging.Mass(pick.AtRest),
            Moving = rigging.Mass(pick.Moving),
            Least = rigging.Mass(pick.Least),
            Bound = rigging.Mass(pick.Bound),
            Hook = rigging.Mass(pick.Hoist),
            Rating = placed.Hoist is null ? Cell.Blank : RatingOf(pick),
            Share = placed.Hoist is null ? Cell.Blank : RiggingCells.Share(pick.Hoist, pick.Rating),
            High = Cell.Blank,
            Low = Cell.Blank,
            Notes = Notes(pick, slung),
        };
    }

    /// <summary>The least that a hook of a truss may be off, with unit and links, and what is over its limit then; empty where nothing depends on it.</summary>
    public (string Level, string Over) Tightest(TrussPlan truss)
    {
        var least = truss.Tolerances.Where(tolerance => tolerance.Least is not null).OrderBy(tolerance => tolerance.Least).FirstOrDefault();
        if (least is null)
        {
            return ("", "");
        }

        var use = least.Raise == least.Least ? least.RaiseUse : least.DropUse;
        var off = rigging.Small(least.Least!.Value).Text;
        var links = truss.Picks[least.Hoist].Placed.Hoist?.Kind?.Hoist?.Link is { IsKnown: true } link ? $" ({Links(least.Least.Value, link.Value.Meters)})" : "";
        return ($"{off} {rigging.SmallUnit}{links}", use is null ? "a hoist or the truss" : PartOf(truss, use));
    }

    /// <summary>What is used most: <c>hoist T1-2</c>, <c>the truss, sagging at 4.5 m</c>.</summary>
    public string PartOf(TrussPlan truss, LiftUse use)
    {
        var at = use.At is { } place ? $" at {speech.Say(UnitsNet.Length.FromMeters(place))}" : "";
        return use.Part switch
        {
            LiftPart.Hoist => use.Hoist is { } hoist ? $"{truss.Picks[hoist].Name}, its hoist or point" : "a hoist",
            LiftPart.Sagging => $"the truss, sagging{at}",
            LiftPart.Hogging => $"the truss, hogging{at}",
            LiftPart.Shear => $"the truss, in shear{at}",
            _ => $"the truss, moment and shear{at}",
        };
    }

    // Its maker gives no rating for that many people below: it may not hang there at all.
    private Cell RatingOf(PickPlan pick) => pick.Placed.Hoist?.Kind?.Hoist is not null && pick.Rating is { Value: null, RestsOn.Any: false }
        ? new Cell("may not") { Verdict = Paper.Tree.Verdict.Fails }
        : rigging.Mass(pick.Rating);

    private Cell Off(TrussPlan truss, Domain.Stocks.Hoist? hoist, int index, Func<LiftTolerance, double?> of)
    {
        if (index >= truss.Tolerances.Count)
        {
            return new Cell(truss.Study is not null ? "–" : "?") { Verdict = truss.Study is not null ? Paper.Tree.Verdict.Plain : Paper.Tree.Verdict.CannotBeJudged };
        }

        if (of(truss.Tolerances[index]) is not { } off)
        {
            // Nothing that is counted comes to its limit, but something is not counted: then nobody knows.
            return truss.Picks.All(hung.IsBounded) ? Cell.Of("any") : new Cell("?") { Verdict = Paper.Tree.Verdict.CannotBeJudged };
        }

        var cell = rigging.Small(off) with { Verdict = off <= 0 ? Paper.Tree.Verdict.Fails : Paper.Tree.Verdict.Plain };
        return hoist?.Link is { IsKnown: true } link ? cell with { Text = $"{cell.Text} · {Links(off, link.Value.Meters).Replace("under ", "<", StringComparison.Ordinal)}" } : cell;
    }

    private static string Links(double off, double link)
    {
        var whole = (int)Math.Floor((off / link) + 1e-9);
        return whole == 0 ? "under 1 link" : whole == 1 ? "1 link" : string.Create(CultureInfo.InvariantCulture, $"{whole} links");
    }

    private string CaseOf(Words? words) => words is null ? "" : speech.Say(words);

    private string Notes(PickPlan pick, string slung)
    {
        var placed = pick.Placed;
        var unrated = placed.Gear.Where(piece => piece.Kind?.Lifting is null).ToList();
        var gear = unrated.Count > 0 ? $"{GearWords.Of(unrated, null)}, of which no rating is known" : "";
        var drop = placed.Drop.Count > 0 ? $"above the hoist: {GearWords.Of(placed.Drop, placed.DropMade)}" : "";
        var (rest, moving) = (CaseOf(pick.AtRestCase), CaseOf(pick.MovingCase));
        var cases = rest.Length == 0 ? "" : rest == moving ? $"most: {rest}" : $"most at rest: {rest}; moving: {moving}";
        return string.Join(" · ", new[] { cases, slung.Length > 0 ? $"slings {slung}" : "", gear, drop, ControlOf(pick) }.Where(part => part.Length > 0));
    }

    /// <summary>How all picks of a truss are slung; empty where they are not alike, and where nobody says.</summary>
    public static string SlungAlike(TrussPlan truss) => truss.Picks.Select(pick => SlungOf(pick.Placed.Pick)).Distinct(StringComparer.Ordinal).ToList() is [var alike] ? alike : "";

    private static string SlungOf(Domain.Gigs.Pick pick)
    {
        var chords = pick.Holds is { IsKnown: true } held ? $"on {held.Value.Words()}" : "";
        var wrap = pick.Wrap is { IsKnown: true } around ? $"{(around.Value == Domain.Gigs.SlingWrap.Double ? "double" : "single")} wrap" : "";
        return string.Join(", ", new[] { chords, wrap }.Where(part => part.Length > 0));
    }

    // Which group, and which of it this is, as they are plugged in.
    private string ControlOf(PickPlan pick)
    {
        var group = hung.Picks.Where(one => one.Placed.Hoist is not null && one.Placed.Pick.Group == pick.Placed.Pick.Group).ToList();
        return pick.Placed.Pick.Group.Length == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"control {pick.Placed.Pick.Group}, {group.IndexOf(pick) + 1} of {group.Count}");
    }
}
