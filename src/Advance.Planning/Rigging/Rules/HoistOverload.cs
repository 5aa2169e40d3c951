using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>rigging/hoist-overload</c></summary>
internal sealed class HoistOverload : Rule<HoistOverload.Case>
{
    public override string Name => "rigging/hoist-overload";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "A hoist carries more while it moves than it may with the people that are below.";

    public override string Why => "A hoist over its rating slips, or its chain breaks, and what it carries falls.";

    public override string Cures => "A stronger hoist, one more pick, less weight, or nobody below.";

    public override Publication Source => Handbook.RiggingStandards.EventRigging;

    // What hangs dead has no hoist. Where nobody knows what comes to it, another rule asks.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from pick in plan.Rigging.Picks
        where pick.Placed.Hoist?.Kind?.Hoist is not null && pick.Hoist.Value is not null
        select new Case(pick);

    protected override Said Say(Case found) => found.Pick switch
    {
        { RatingAtRest: { Value: null, RestsOn.Any: false } } pick => new($"{pick.Name}: {pick.Placed.Hoist!.Item} has no rating for holding over people.", "A hoist that may hold over people, or write that nobody is ever below.", $"none"),
        { Rating: { Value: null, RestsOn.Any: false } } pick => new($"{pick.Name}: {pick.Placed.Hoist!.Item} has no rating for moving over people.", "A hoist that may, or clear the area while it moves.", $"none"),
        { Rating.Value: { } rating } pick when pick.Hoist.AtMost(pick.Rating) == Verdict.Fails => new($"{pick.Name}: {pick.Hoist.Value!.Value} on the hoist while it moves ({pick.MovingCase!}), and it may bear {rating}.", "A stronger hoist, one more pick, or less weight.", $"{pick.Hoist.Value!.Value} of {rating}"),
        { RatingAtRest.Value: { } rating } pick => new($"{pick.Name}: {pick.HoistAtRest.Value!.Value} on the hoist at rest ({pick.AtRestCase!}), and it may hold {rating} over people.", "A stronger hoist, one more pick, or less weight.", $"{pick.HoistAtRest.Value!.Value} of {rating}"),
        var pick => new($"{pick.Name}: nobody knows what its hoist may bear.", "Write what it lifts and holds to its kind.", $"unknown"),
    };

    // One that has no rating over people may not hold over them.
    private static Verdict Judge(PickPlan pick)
    {
        var isForbidden = new[] { pick.Rating, pick.RatingAtRest }.Any(rating => rating.Value is null && !rating.RestsOn.Any);
        var (moving, rest) = (pick.Hoist.AtMost(pick.Rating), pick.HoistAtRest.AtMost(pick.RatingAtRest));
        return isForbidden || moving == Verdict.Fails || rest == Verdict.Fails ? Verdict.Fails : moving == Verdict.Holds ? rest : moving;
    }

    internal sealed record Case(PickPlan Pick) : Judgement(Pick.Address / "hoist", Pick.Placed.Pick.At, Judge(Pick), Pick.Hoist.RestsOn.With(Pick.Rating.RestsOn).With(Pick.RatingAtRest.RestsOn));
}
