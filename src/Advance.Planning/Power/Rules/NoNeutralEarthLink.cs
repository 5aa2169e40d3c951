using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>power/no-neutral-earth-link</c></summary>
internal sealed class NoNeutralEarthLink : Rule<NoNeutralEarthLink.Case>
{
    public override string Name => "power/no-neutral-earth-link";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "A generator or another source of its own has its neutral joined to earth nowhere.";

    public override string Why => "A first fault then draws no current: no residual-current device sees it, and metal stays live until somebody bridges it.";

    public override string Cures => "Have whoever gives the set fit one link, at the set, and write where it is.";

    public override Publication Source { get; } = new("BS 7671: neutral of a generating set joined to earth", "2018 + A2:2022", "551.4.3", Standing.FromMemory);

    // The public network joins its own; a box with a link of its own joins what is joined nowhere else.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from point in plan.Power.ServicesInUse
        where SupplyEarthing.IsOwnSource(point.Service!)
        select new Case(point, Judge(point, plan));

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new($"{found.Point.Name}: nobody knows where its neutral is joined to earth.", "Ask whoever gives the set, and write neutral-earth-link of the service.", $"unknown")
        : new($"{found.Point.Name}: its neutral is joined to earth nowhere.", "Have one link fitted at the set.", $"none");

    private static Verdict Judge(SupplyPoint point, Plan plan) =>
        SupplyEarthing.IsLinked(point.Service!) == true || NeutralLinks.Below(point, plan).Count > 0 ? Verdict.Holds
        : SupplyEarthing.IsLinked(point.Service!) == false ? Verdict.Fails : Verdict.CannotBeJudged;

    internal sealed record Case(SupplyPoint Point, Verdict Verdict)
        : Judgement(Point.Address / "neutral-earth-link", Point.Service!.At, Verdict, Doubts.Of(Point.Service!.NeutralEarthLink?.Doubt).With(Doubts.Of(Point.Service.Earthing.Doubt)));
}
