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
        from truss in plan.Rigging.Trusses
        from pick in truss.Picks
        where pick.Placed.Hoist?.Kind?.Hoist is not null && pick.Hoist.Value is not null
        select new Case(pick);

    protected override Said Say(Case found) => found.Pick.Rating.Value is { } rating
        ? new($"{found.Pick.Name}: {found.Pick.Hoist.Value!.Value} on the hoist while it moves ({found.Pick.MovingCase}), and it may bear {rating}.", "A stronger hoist, one more pick, or less weight.", $"{found.Pick.Hoist.Value!.Value} of {rating}")
        : new($"{found.Pick.Name}: {found.Pick.Placed.Hoist!.Item} has no rating for holding over people.", "A hoist that may hold over people, or write that nobody is ever below.", $"none");

    // One that has no rating over people may not hold over them.
    private static Verdict Judge(PickPlan pick) => pick.Rating.Value is null && !pick.Rating.RestsOn.Any ? Verdict.Fails : pick.Hoist.AtMost(pick.Rating);

    internal sealed record Case(PickPlan Pick) : Judgement(Pick.Address / "hoist", Pick.Placed.Pick.At, Judge(Pick), Pick.Hoist.RestsOn.With(Pick.Rating.RestsOn));
}
