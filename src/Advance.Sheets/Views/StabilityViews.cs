using System.Globalization;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Venues;
using Advance.Domain.Wording;
using Advance.Planning;
using UnitsNet;
using Verdict = Advance.Paper.Tree.Verdict;

namespace Advance.Sheets.Views;

/// <summary>Makes the stability sheet.</summary>
internal sealed class StabilityViews
{
    private const string Engineer = "site/needs-engineer";

    private static readonly Cell NotTold = new("not told") { Verdict = Verdict.CannotBeJudged };

    private readonly Plan plan;
    private readonly StandingPlan standing;
    private readonly Cells cells;
    private readonly Speech speech;
    private readonly double ratio;
    private readonly StabilityFacts facts;

    private StabilityViews(Plan plan)
    {
        this.plan = plan;
        standing = plan.Standing;
        cells = new Cells(plan);
        speech = Speech.Of(plan.Brief.Company.Units);
        ratio = plan.Brief.Company.Policies.Standing.Ratio;
        facts = new StabilityFacts(plan, cells);
    }

    private Domain.Companies.StandingPolicies Policies => plan.Brief.Company.Policies.Standing;

    private bool IsInWind => standing.Site.IsOpenAir == true;

    /// <summary>Null where nothing stands that could fall.</summary>
    public static StabilityView? Of(Plan plan) => plan.Standing.Items.Count == 0 && plan.Standing.Cloths.Count == 0 && plan.Standing.Site.Wind is null ? null : new StabilityViews(plan).View();

    private StabilityView View()
    {
        var lowered = standing.Site.Wind?.Lowered ?? [];
        var ready = standing.Items.Select(item => item.Prepare).Concat(standing.Cloths.Select(cloth => cloth.Prepare)).Concat(lowered.Select(row => Share(row.From, "prepare", Policies.Prepare))).OfType<Figure<Speed>>().Where(figure => figure.Value is not null).MinBy(figure => figure.Value!.Value);
        var act = standing.Items.Select(item => item.Act).Concat(standing.Cloths.Select(cloth => cloth.Act)).Concat(lowered.Select(row => Share(row.From, "act", Policies.Act))).OfType<Figure<Speed>>().Where(figure => figure.Value is not null).MinBy(figure => figure.Value!.Value);
        return new StabilityView(
            [.. facts.Site()],
            IsInWind,
            FindingViews.Heavy(plan, finding => FindingViews.IsOf(finding, "stack") || finding.Rule == Engineer),
            [.. standing.Items.Where(item => item.Limit is not null).OrderBy(item => item.Limit!.Value?.MetersPerSecond ?? 0).ThenBy(item => item.Address).Select(LevelOf)
                .Concat(standing.Cloths.Select(LevelOf))
                .Concat(lowered.Where(row => !IsTold(row)).OrderBy(row => row.From is { IsKnown: true } from ? from.Value.MetersPerSecond : 0).Select(LevelOf))
                .GroupBy(Key).Select(alike => alike.First() with { Name = Together(alike.Select(level => level.Name.Text)) })],
            [.. standing.Items.OrderBy(item => item.Limit?.Value?.MetersPerSecond ?? 0).Select(ItemOf).GroupBy(Key).Select(alike => alike.First() with { Name = Together(alike.Select(item => item.Name)).Text })])
        {
            MassUnit = cells.MassUnit,
            LengthUnit = cells.LengthUnit,
            WindUnit = speech.Paper.Wind,
            AreaUnit = speech.Paper.Area,
            Asked = Cell.Of(Numbers.Plain(ratio, 2)),
            FirstReady = ready is null ? Cell.Blank : Gust(ready),
            FirstAct = act is null ? Cell.Blank : Gust(act),
            HasBallast = standing.Items.Any(item => item.Ballasted.Count > 0),
        };
    }

    // What is printed alike is printed once, under both names.
    private static string Key(StabilityView.Level level) =>
        string.Join('|', new[] { level.Prepare, level.Act, level.Limit, level.From, level.Forecast, level.Takes, level.By }.Select(cell => $"{cell.Text} {cell.Tbc}"));

    private static string Key(StabilityView.Item item) => string.Join('|', item.Facts.Select(fact => $"{fact.Name} {fact.Value.Text} {fact.Value.Tbc}")
        .Concat(item.Edges.SelectMany(edge => new[] { edge.Name, edge.Inside, edge.Angle, edge.Slope, edge.From, edge.Tipping, edge.Sliding, edge.Tips, edge.Slides }.Select(cell => cell.Text)))
        .Concat(item.Parts.SelectMany(part => new[] { part.Name, part.Holds, part.Known, part.Up, part.Front, part.Side, part.Coefficient, part.Source }.Select(cell => cell.Text)))
        .Append(item.Assumed));

    private static Cell Together(IEnumerable<string> names) => Cell.Of(string.Join(", ", names)) with { Strong = true };

    // What is to be done at a share of the gust before which something has to be down.
    private static Figure<Speed>? Share(Given<Speed>? from, string policy, double share) => from is not { } given ? null : Sum
        .Of(policy == "act" ? "gust to act at" : "gust to make ready at", "v = s / 100 · V", Publication.CommonPractice)
        .Put("s", Figure.Policy($"standing / {policy}", share))
        .Put("V", Figure.From(given))
        .Gives((part, speed) => part / 100 * speed);

    private StabilityView.Level LevelOf(StandingItem item) => new(
        Cell.Of(item.Name) with { Strong = true },
        Gust(item.Prepare!),
        Gust(item.Act!) with { Strong = true },
        Gust(item.Limit!) is var limit && item.Gust.AtMost(item.Limit!) == Domain.Figures.Verdict.Fails ? limit with { Verdict = Verdict.Fails } : limit,
        Cell.Of(item.LimitFrom),
        Gust(item.Forecast!),
        RowOf(item) is { } row ? cells.Amount(Figure.From(row.Takes), time => time.Minutes, 0) : Cell.Blank,
        RowOf(item)?.By is { } by ? cells.Of(by) : Cell.Blank);

    private LoweredRow? RowOf(StandingItem item) => standing.Site.Wind?.Lowered.FirstOrDefault(row => row.What == item.Name || row.What == item.WrittenName);

    private StabilityView.Level LevelOf(ClothPlan cloth) => new(
        Cell.Of($"{cloth.What} on {cloth.On}") with { Strong = true },
        Gust(cloth.Prepare),
        Gust(cloth.Act) with { Strong = true },
        Gust(cloth.Limit) is var limit && cloth.Lowered?.From is null && cloth.Gust.AtMost(cloth.Limit) == Domain.Figures.Verdict.Fails ? limit with { Verdict = Verdict.Fails } : limit,
        Cell.Of(cloth.Lowered?.From is null ? ClothWords(cloth) : "must be down, as written") with { Tbc = cloth.Push.RestsOn.Any ? "" : null },
        Gust(cloth.Forecast),
        cloth.Lowered is { } row ? cells.Amount(Figure.From(row.Takes), time => time.Minutes, 0) : Cell.Blank,
        cloth.Lowered?.By is { } by ? cells.Of(by) : Cell.Blank);

    private static string ClothWords(ClothPlan cloth) => cloth.Limit.Value is null ? "what wind sees of it is not known"
        : string.Create(CultureInfo.InvariantCulture, $"swings out too far; pushed with {cloth.Push.Value?.Newtons ?? 0:0} N");

    // What comes down by itself and hangs on no truss.
    private StabilityView.Level LevelOf(LoweredRow row) => new(
        Cell.Of(row.What) with { Strong = true },
        Share(row.From, "prepare", Policies.Prepare) is { } ready ? Gust(ready) : NotTold,
        Share(row.From, "act", Policies.Act) is { } act ? Gust(act) with { Strong = true } : NotTold,
        row.From is { } from ? Gust(Figure.From(from)) : NotTold,
        Cell.Of("must be down, as written"),
        Cell.Blank,
        cells.Amount(Figure.From(row.Takes), time => time.Minutes, 0),
        row.By is { } by ? cells.Of(by) : Cell.Blank);

    private bool IsTold(LoweredRow row) => standing.Items.Any(item => RowOf(item) == row) || standing.Cloths.Any(cloth => cloth.Lowered == row);

    private StabilityView.Item ItemOf(StandingItem item) => new(
        item.Name,
        item.Name,
        item.Feet.Count > 2,
        [.. facts.Of(item)],
        [.. Parts(item)],
        [.. item.Whole.Edges.Select(edge => EdgeOf(edge, edge.Name)), .. item.Interfaces.Where(body => body.IsLoose).SelectMany(body => Worst(item, body))],
        string.Join("; ", item.Assumed));

    // Alike parts one above the other are one row, with the height of each.
    private IEnumerable<StabilityView.Part> Parts(StandingItem item) => item.Parts
        .GroupBy(part => (part.Name, part.How, Holds: part.Holds.Value, Front: part.Faces?.Front.Value, Side: part.Faces?.Side.Value, Coefficient: part.Faces?.Coefficient.Value, part.Faces?.Source))
        .Select(alike => (Part: alike.First(), Count: alike.Count(), Heights: alike.Select(part => part.Up).DistinctBy(up => up.Value).ToList()))
        .Select(found => new StabilityView.Part(
            Cell.Of(found.Count > 1 ? string.Create(CultureInfo.InvariantCulture, $"{found.Count} × {found.Part.Name}, each") : found.Part.Name),
            cells.Mass(found.Part.Holds),
            RiggingCells.How(found.Part.How),
            Heights(found.Heights),
            found.Part.Faces is { } faces ? cells.Amount(faces.Front, speech.Paper.In, 2) : Cell.Of("none"),
            found.Part.Faces is { } sides ? cells.Amount(sides.Side, speech.Paper.In, 2) : Cell.Of("none"),
            found.Part.Faces is { } has ? cells.Amount(has.Coefficient, times => times, 2) : Cell.Blank,
            Cell.Of(found.Part.Faces?.Source ?? "")));

    private Cell Heights(List<Figure<Length>> heights) => heights.Count == 1
        ? cells.Amount(heights[0], Far, 2)
        : Cell.Of(string.Join(", ", heights.Select(up => cells.Amount(up, Far, 2).Text))) with { Tbc = heights.Exists(up => up.RestsOn.Any) ? "" : null };

    private IEnumerable<StabilityView.Edge> Worst(StandingItem item, StandingBody body)
    {
        var worst = body.WorstSliding is { } slides && !(body.WorstTipping?.Tipping?.Value < slides.Sliding!.Value) ? slides : body.WorstTipping ?? (body.Edges.Count > 0 ? body.Edges[0] : null);
        return worst is null ? [] : [EdgeOf(worst, $"{body.Name[(item.Name.Length + 1)..]}, loose, {worst.Name}")];
    }

    private StabilityView.Edge EdgeOf(StandingEdge edge, string name) => new(
        Cell.Of(name),
        cells.Amount(edge.Inside, Far, 2),
        cells.Amount(edge.Angle, angle => angle.Degrees, 0),
        cells.Amount(edge.Slope, angle => angle.Degrees, 1),
        Cell.Of(edge.From),
        Ratio(edge.Tipping),
        Ratio(edge.Sliding),
        edge.TippingGust is { } tips ? Gust(tips) : Cell.Blank,
        edge.SlidingGust is { } slides ? Gust(slides) : Cell.Blank);

    // What falls short is marked, whatever it is rounded to.
    private Cell Ratio(Figure<double>? figure)
    {
        if (figure is null)
        {
            return Cell.Blank;
        }

        var cell = cells.Amount(figure, value => value, 2);
        return figure.Value < ratio ? cell with { Verdict = Verdict.Fails, Strong = true } : cell;
    }

    private Cell Gust(Figure<Speed> figure) => cells.Amount(figure, speech.Paper.In, 1);

    private double Far(Length length) => speech.Units == Domain.Wording.UnitSystem.Metric ? length.Meters : length.Feet;
}
