using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary><c>stack/ground-too-soft</c></summary>
internal sealed class GroundTooSoft : Rule<GroundTooSoft.Case>
{
    public override string Name => "stack/ground-too-soft";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "Something presses more on the ground than it bears, or its weight acts beyond a third of its base in the stated wind; or nobody says what soft ground bears.";

    public override string Why => "Ground that gives on one side leans what stands on it, after rain more than before.";

    public override string Cures => "Put boards or trackway under it that spread the load, widen its base, or stand it on firmer ground.";

    public override Publication Source => En1997.EffectiveWidth;

    // What the ground bears is asked once.
    protected override IEnumerable<Case> Cases(Plan plan)
    {
        if (plan.Standing.Site is not { IsOpenAir: true, Ground: { } ground })
        {
            yield break;
        }

        var items = plan.Standing.Items.Where(item => item.On == Footing.Floor && item.Ground is not null).ToList();
        if (!ground.Bearing.Is(out _))
        {
            yield return new Case(StandingSite.Address / "bearing", ground.At, items.Count > 0 ? Verdict.CannotBeJudged : Verdict.Holds, Doubts.Of(ground.Bearing.Doubt), "");
            yield break;
        }

        foreach (var pair in items.Select(item => CaseOf(item, Figure.From(ground.Bearing))).GroupBy(found => found.Where))
        {
            yield return pair.OrderBy(found => found.Verdict == Verdict.Fails ? 0 : found.Verdict == Verdict.CannotBeJudged ? 1 : 2).First();
        }
    }

    protected override Said Say(Case found)
    {
        if (found.Name.Length == 0)
        {
            return new("Nobody says what the ground bears that things stand on.", "Ask the site, and write bearing under ground.", "bearing unknown");
        }

        if (found.IsOff)
        {
            return new($"{found.Name}: in the stated wind its weight acts {found.Load!.Off.Value!.Value} off the middle of its base; {found.Load.MostOff.Value!.Value} is the most.", "Widen its base, or fix ballast to it.", $"{found.Load.Off.Value!.Value} of {found.Load.MostOff.Value!.Value}");
        }

        return found.Load?.Most?.Value is { } has
            ? new($"{found.Name}: presses {has} on ground that bears {found.May!.Value!.Value}.", Cures, $"{has} of {found.May.Value!.Value}")
            : new($"{found.Name}: not known what it presses on the ground.", "Say in the stock what one foot covers, or write what it stands on as pad.", "unknown");
    }

    private static Case CaseOf(StandingItem item, Figure<UnitsNet.Pressure> bears)
    {
        var load = item.Ground!;
        var isOff = load.Off.AtMost(load.MostOff) == Verdict.Fails;
        var verdict = isOff ? Verdict.Fails : load.Most is { } most ? most.AtMost(bears) : Verdict.CannotBeJudged;
        return new Case(item.Written / "ground", item.At, verdict, load.Off.RestsOn.With(bears.RestsOn), item.Name) { Load = load, May = bears, IsOff = isOff };
    }

    internal sealed record Case(Address Where, Mark At, Verdict Verdict, Doubts RestsOn, string Name) : Judgement(Where, At, Verdict, RestsOn)
    {
        public GroundLoad? Load { get; init; }

        public Figure<UnitsNet.Pressure>? May { get; init; }

        public bool IsOff { get; init; }
    }
}
