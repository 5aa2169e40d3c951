using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>power/combined-earth-outdoors</c></summary>
internal sealed class CombinedEarthOutdoors : Rule<CombinedEarthOutdoors.Case>
{
    public override string Name => "power/combined-earth-outdoors";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "Things in the open or in the wet hang on a supply that has neutral and earth in one conductor as far as the building (TN-C-S).";

    public override string Why => "If that conductor breaks in the street, all metal on stage is live against the ground people stand on, and nothing opens.";

    public override string Cures => "Make it TT with an electrode and residual-current devices, or use a generator; the electrician and the network decide.";

    public override Publication Source { get; } = new("BS 7671: no protective multiple earthing for temporary structures in the open", "2018 + A2:2022", "711.411.4, 740.411.4", Standing.FromMemory);

    // Of a service of which nobody says that it is outdoors, nothing is asked.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from point in plan.Power.ServicesInUse
        where point.Service!.IsOutdoor is { } outdoor && !(outdoor.IsKnown && !outdoor.Value) && SupplyEarthing.Of(point.Service!) == SystemEarthing.TnCS
        select new Case(point, point.Service!.IsOutdoor is { IsKnown: true } ? Verdict.Fails : Verdict.CannotBeJudged);

    protected override Said Say(Case found) => new(
        found.Verdict == Verdict.Fails ? $"{found.Point.Name} is TN-C-S, and what hangs on it is in the open." : $"{found.Point.Name} is TN-C-S, and nobody knows whether what hangs on it is in the open.",
        "Make it TT with an electrode and residual-current devices, or use a generator.",
        $"TN-C-S");

    internal sealed record Case(SupplyPoint Point, Verdict Verdict)
        : Judgement(Point.Address / "combined-earth", Point.Service!.At, Verdict, Doubts.Of(Point.Service!.Earthing.Doubt).With(Doubts.Of(Point.Service.IsOutdoor?.Doubt)));
}
