using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Wording;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>stack/tips</c></summary>
internal sealed class Tips : Rule<Tips.Case>
{
    public override string Name => "stack/tips";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "Something that stands tips in the stated wind, by a push of people, by itself, or at a smaller angle than the company lets it; or nobody says what wind it stands in.";

    public override string Why => "What falls over falls on people.";

    public override string Cures => "Make the base wider or the thing lower, fix ballast to it, or join it to something that holds.";

    public override Publication Source => RigidBodies.Balance;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var (standing, angle) = (plan.Standing, plan.Brief.Company.Policies.Standing.TipAngle);
        if (standing.Site.IsOpenAir == true && standing.Site.Gust.Value is null && standing.Items.Count > 0)
        {
            return [Case.OfSite(standing.Site)];
        }

        return standing.Items.SelectMany(item => BodiesOf(item).Select(body => CaseOf(item, body, angle, standing.Site.IsOpenAir == true)))
            .GroupBy(found => found.Where)
            .Select(pair => pair.OrderByDescending(found => found.Verdict == Verdict.Fails).ThenByDescending(found => found.Verdict == Verdict.CannotBeJudged).ThenBy(found => found.Edge?.Tipping?.Value ?? double.MaxValue).First());
    }

    protected override Said Say(Case found)
    {
        if (found.Item is not { } item)
        {
            return new("Nobody says up to what gust everything in the open air stands.", "Ask the site and whoever built the roof, and write it under wind.", "gust unknown");
        }

        var name = found.Body!.Name;
        if (found.Verdict == Verdict.CannotBeJudged)
        {
            return new($"{name}: not known whether it tips: {found.Missing}.", "Weigh and measure it, and write that into the stock.", $"{found.Missing}");
        }

        var edge = found.Edge!;
        if (edge.Arm.Value is { Meters: <= 0 })
        {
            return new($"{name}: its weight is not over its feet at its {edge.Name}.", Cures, $"arm {edge.Arm.Value.Value}");
        }

        if (edge.Tipping?.Value is { } ratio && ratio < 1)
        {
            Words by = found.IsInWind ? (Words)$"in a gust of {item.Gust.Value!.Value} from {edge.From}" : $"when people push";
            return new(
                $"{name}: tips over its {edge.Name} {by}: what holds is {Two(ratio)} of what tips.",
                item.Ballast?.Value is { Kilograms: > 0 } lacks && found.Body == item.Whole ? Words.Of($"Fix {Up(lacks)} of ballast to the middle of its base, make it lower, or join it to something that holds.") : (Words)Cures,
                $"ratio {Two(ratio)}");
        }

        return new($"{name}: tips over its {edge.Name} at {edge.Angle.Value!.Value}; at least {found.Least} is asked.", Cures, $"{edge.Angle.Value!.Value}");
    }

    internal static double Two(double ratio) => Math.Floor(ratio * 100) / 100;

    // To the next 5 kg: ballast comes in pieces.
    internal static Mass Up(Mass mass) => Mass.FromKilograms(5 * Math.Ceiling(mass.Kilograms / 5));

    // Where nobody knows the whole, its parts need no question of their own.
    private static IEnumerable<StandingBody> BodiesOf(StandingItem item) => item.Whole.StandsByItself is null ? [item.Whole] : item.Loose;

    private static Case CaseOf(StandingItem item, StandingBody body, Angle least, bool isInWind)
    {
        var missing = MissingOf(body, isInWind);
        var edge = body.Edges.OrderBy(one => one.Arm.Value is { Meters: <= 0 } ? 0 : 1).ThenBy(one => one.Tipping?.Value ?? double.MaxValue).ThenBy(one => one.Angle.Value?.Degrees ?? 0).FirstOrDefault();
        var shallow = !isInWind && body == item.Whole ? body.Edges.MinBy(one => one.Angle.Value?.Degrees ?? double.MaxValue) : null;
        var isShallow = shallow?.Angle.Value is { } angle && angle < least;
        var falls = body.StandsByItself == false || edge?.Tipping?.Value < 1;
        var verdict = missing.Length > 0 ? Verdict.CannotBeJudged : falls || isShallow ? Verdict.Fails : Verdict.Holds;
        return new Case(body == item.Whole ? item.Written : item.Written / body.Name[(item.Name.Length + 1)..], item.At, verdict, item.RestsOn)
        {
            Item = item,
            Body = body,
            Edge = falls ? edge : isShallow ? shallow : edge,
            Least = least,
            IsInWind = isInWind,
            Missing = missing,
        };
    }

    private static string MissingOf(StandingBody body, bool isInWind) =>
        body.Edges.Count == 0 ? "where its feet are is unknown"
        : body.Holds.Value is null ? "its weight is unknown"
        : body.CentreHeight.Value is null ? "how high it is is unknown"
        : isInWind && body.Edges.Any(edge => edge.Moment is { Value: null }) ? "what the wind finds of it is unknown"
        : "";

    internal sealed record Case(Address Where, Mark At, Verdict Verdict, Doubts RestsOn) : Judgement(Where, At, Verdict, RestsOn)
    {
        public StandingItem? Item { get; init; }

        public StandingBody? Body { get; init; }

        public StandingEdge? Edge { get; init; }

        public Angle Least { get; init; }

        public bool IsInWind { get; init; }

        public string Missing { get; init; } = "";

        public static Case OfSite(StandingSite site) => new(StandingSite.Address / "wind", site.At, Verdict.CannotBeJudged, site.Gust.RestsOn);
    }
}
