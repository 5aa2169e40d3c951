using System.Globalization;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Venues;
using Advance.Domain.Wording;
using Advance.Planning;
using UnitsNet;
using Verdict = Advance.Paper.Tree.Verdict;

namespace Advance.Sheets.Views;

/// <summary>Says in pairs what is known of wind, ground, and each thing that stands.</summary>
internal sealed class StabilityFacts(Plan plan, Cells cells)
{
    private static readonly Cell NotTold = new("not told") { Verdict = Verdict.CannotBeJudged };

    private readonly Speech speech = Speech.Of(plan.Brief.Company.Units);

    private StandingSite Around => plan.Standing.Site;

    /// <summary>Wind and ground.</summary>
    public IEnumerable<PairView> Site()
    {
        if (Around.IsOpenAir != true)
        {
            var push = plan.Brief.Company.Policies.Standing;
            yield return new PairView("Wind", Around.IsOpenAir == false ? Cell.Of("none gets here") : new Cell("nobody says whether any gets here") { Verdict = Verdict.CannotBeJudged });
            yield return new PairView("Push of people", Cell.Of(string.Create(CultureInfo.InvariantCulture, $"{push.Push:0.#} % of the weight, {PushMost(push.PushMost)} at most, at the top or at {speech.Say(push.PushHeight)}")));
            yield break;
        }

        var wind = Around.Wind;
        yield return new PairView("All stands up to", cells.WithUnit(Around.Gust) is var gust && wind?.Height is { IsKnown: true } high ? gust with { Text = $"{gust.Text} gust at {cells.Of(high).Text}", Strong = true } : gust with { Strong = true });
        yield return new PairView("Measured by", Told(wind?.MeasuredBy));
        yield return new PairView("Meter", Told(wind?.Meter));
        yield return new PairView("Decided by", Told(wind?.DecidedBy));
        yield return new PairView("Wind comes over", Cell.Of(Around.Terrain.IsAssumed ? $"{Over(Around.Terrain.Over)}, assumed" : Over(Around.Terrain.Over)));
        yield return new PairView("Ground", Around.Ground is { Surface.Length: > 0 } ground ? Cell.Of(ground.IsSoft ? $"{ground.Surface}; soft after rain" : ground.Surface) : NotTold);
        yield return new PairView("Falls", Around.Ground is { } falls ? Slope(falls) : NotTold);
        yield return new PairView("Bears", Around.Ground is { } bears ? Told<Pressure>(bears.Bearing) : NotTold);
        yield return new PairView("Friction, wet", Around.Ground is { } wet ? Told<double>(wet.Friction) : NotTold);
    }

    /// <summary>One thing.</summary>
    public IEnumerable<PairView> Of(StandingItem item)
    {
        yield return new PairView("Holds", cells.WithUnit(item.Whole.Holds) with { Strong = true });
        yield return new PairView("Centre", Up(cells.WithUnit(item.Whole.CentreHeight)));
        yield return new PairView("Height", cells.WithUnit(item.Height));
        yield return new PairView("Stands on", Cell.Of(item.On switch { Footing.Deck => "deck", Footing.Floor => Around.IsOpenAir == true ? "ground" : "floor", _ => "not known" }));
        // In the open the ground's stands over all of it.
        if (Around.IsOpenAir != true || item.On != Footing.Floor || item.Whole.IsFrictionAssumed)
        {
            yield return new PairView("Friction", FrictionOf(item.Whole));
        }

        if (item.Ballasted.Count > 0 || item.Ballast?.Value is { Kilograms: > 0 })
        {
            yield return new PairView("Ballast", Cell.Of(item.Ballasted.Count == 0 ? "none" : string.Join(", ", item.Ballasted.Select(BallastWords))));
        }

        if (item.Ballast is { } lacks)
        {
            yield return new PairView("Lacks", lacks.Value is { Kilograms: <= 0 } ? Cell.Of("nothing") with { Tbc = cells.NoteOf(lacks.RestsOn) } : Lacking(lacks));
        }

        if (item.Twist is { } twist)
        {
            yield return new PairView("Wind twists it with", cells.WithUnit(twist));
            yield return new PairView("Friction holds", Turning(item));
        }

        foreach (var joint in Joints(item))
        {
            yield return joint;
        }

        if (item.Ground is { } ground)
        {
            yield return new PairView("On the ground", cells.WithUnit(ground.Weight));
            if (ground.Most is { } most)
            {
                yield return new PairView("Presses", ground.UnderFoot is null ? cells.WithUnit(most) : UnderFoot(cells.WithUnit(most)));
            }

            if (ground.Foot is { } foot)
            {
                yield return new PairView("A foot, at most", cells.WithUnit(foot));
            }
        }
    }

    // Joints alike, one above the other, are told together: above box 1, 2.
    private IEnumerable<PairView> Joints(StandingItem item)
    {
        var told = item.Interfaces.Select(body => new PairView(DaySheetViews.Capital(body.Name[(item.Name.Length + 1)..]), body.IsLoose ? new Cell("stands loose") { Strong = true } : Cell.Of(Joint(body)))).ToList();
        for (var first = 0; first < told.Count;)
        {
            var alike = told.Skip(first).TakeWhile(next => next.Value == told[first].Value).ToList();
            yield return new PairView(string.Join(", ", alike.Select((next, index) => index == 0 ? next.Name : next.Name[(next.Name.LastIndexOf(' ') + 1)..])), told[first].Value);
            first += alike.Count;
        }
    }

    private Cell FrictionOf(StandingBody body)
    {
        var cell = cells.Amount(body.Friction, value => value, 2);
        return body.IsFrictionAssumed ? cell with { Text = $"{cell.Text}, assumed" } : cell;
    }

    private Cell Lacking(Figure<Mass> lacks)
    {
        var cell = cells.WithUnit(lacks);
        return cell with { Text = $"{cell.Text} fixed in the middle", Strong = true, Verdict = Verdict.Fails };
    }

    private Cell Turning(StandingItem item) => item.Turning!.Value is not { } held
        ? new Cell("?") { Verdict = Verdict.CannotBeJudged, Tbc = cells.NoteOf(item.Turning.RestsOn) }
        : new Cell(string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(held * 100) / 100:0.00} of that, pushed along as well"))
        {
            Tbc = cells.NoteOf(item.Turning.RestsOn),
            Verdict = held >= 1 ? Verdict.Plain : item.Whole.IsFrictionAssumed ? Verdict.CannotBeJudged : Verdict.Fails,
        };

    private static Cell UnderFoot(Cell cell) => cell with { Text = $"{cell.Text} under a foot" };

    private static Cell Up(Cell cell) => cell with { Text = $"of gravity {cell.Text} up" };

    // What people push with is said in newtons: in kN it is nothing.
    private string PushMost(Force push) => speech.Units == Domain.Wording.UnitSystem.Metric ? string.Create(CultureInfo.InvariantCulture, $"{push.Newtons:0} N") : speech.Say(push);

    private string Joint(StandingBody body)
    {
        var asked = body.Edges.Max(edge => edge.ForJoint?.Value?.NewtonMeters ?? 0);
        return asked > 0 ? $"{body.Joint}; has to hold {speech.Say(Torque.FromNewtonMeters(asked))}" : body.Joint;
    }

    private string BallastWords(BallastRow row)
    {
        var places = new[] { Offset("across", row.Across), Offset("back", row.Back), Offset("up", row.Height) }.Where(text => text.Length > 0).ToList();
        var where = places.Count > 0 ? string.Join(", ", places) : "in the middle";
        return $"{row.Count} × {row.Item}, {(row.IsFixed ? "fixed" : "loose: counts for nothing")}, {where}";
    }

    private string Offset(string word, Given<Length>? given) => given is { } offset ? $"{cells.Of(offset).Text} {word}" : "";

    private Cell Slope(SiteGround ground)
    {
        var cell = Told<Angle>(ground.Slope);
        return ground.Falls is { IsKnown: true } falls ? cell with { Text = $"{cell.Text} to {Domain.Places.StageEdgeWords.Of(falls.Value)}" } : cell;
    }

    private static string Over(Terrain terrain) => terrain switch
    {
        Terrain.Sea => "sea",
        Terrain.Flat => "flat country",
        Terrain.Suburb => "suburb",
        Terrain.Town => "town",
        _ => "open country",
    };

    private Cell Told<T>(Given<T>? given)
        where T : notnull => given is { } told ? Told(told) : NotTold;

    // What is asked and not answered is hatched.
    private Cell Told<T>(Given<T> given)
        where T : notnull => cells.Of(given) is var cell && cell.Text.Length == 0 ? cell with { Text = "not told", Verdict = Verdict.CannotBeJudged } : cell;
}
