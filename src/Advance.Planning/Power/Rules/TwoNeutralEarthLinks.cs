using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>power/two-neutral-earth-links</c></summary>
internal sealed class TwoNeutralEarthLinks : Rule<TwoNeutralEarthLinks.Case>
{
    public override string Name => "power/two-neutral-earth-links";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "The neutral of one supply is joined to earth in two places, or behind a residual-current device.";

    public override string Why => "What should come back by the neutral then comes back by the earth as well: through truss, screens and people, and residual-current devices open for no fault.";

    public override string Cures => "Take out the link in the box: one source has one link, at the source.";

    public override Publication Source { get; } = new("BS 7671: neutral and earth are joined once, at the source", "2018 + A2:2022", "411.4.3, 531.3.1", Standing.FromMemory);

    protected override IEnumerable<Case> Cases(Plan plan) =>
        from point in plan.Power.ServicesInUse
        let boxes = NeutralLinks.Below(point, plan)
        where boxes.Count > 0
        select new Case(point, boxes, Judge(point, boxes));

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new($"{found.Boxes[0].Name} joins neutral and earth, and nobody knows whether {found.Point.Name} does so too.", "Write neutral-earth-link of the service.", $"unknown")
        : new($"{Names(found)} {(found.Boxes.Count == 1 ? "joins" : "join")} neutral and earth, and {found.Point.Name} has {(SupplyEarthing.IsLinked(found.Point.Service!) == true ? "its own link" : "a residual-current device before that, or another link")}.", "Take out the link in the box.", $"{Names(found)}");

    private static string Names(Case found) => string.Join(", ", found.Boxes.Select(box => box.Name));

    private static Verdict Judge(SupplyPoint service, IReadOnlyList<SupplyPoint> boxes) =>
        boxes.Count > 1 || SupplyEarthing.IsLinked(service.Service!) == true || boxes.Any(box => ResidualDevice.Above(box).Count > 0) ? Verdict.Fails
        : SupplyEarthing.IsLinked(service.Service!) == false ? Verdict.Holds : Verdict.CannotBeJudged;

    internal sealed record Case(SupplyPoint Point, IReadOnlyList<SupplyPoint> Boxes, Verdict Verdict)
        : Judgement(Point.Address / "links", Boxes[0].At, Verdict, Doubts.Of(Point.Service!.NeutralEarthLink?.Doubt).With(Doubts.Of(Point.Service.Earthing.Doubt)));
}
