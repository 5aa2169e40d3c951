using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>rigging/bridle-too-flat</c></summary>
internal sealed class BridleTooFlat : Rule<BridleTooFlat.Case>
{
    public override string Name => "rigging/bridle-too-flat";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "Two legs of a bridle open to 120 degrees or more, or a leg lies under 30 degrees from the horizontal.";

    public override string Why => "Each leg then carries more than the whole load, and a hand's breadth changes it by a hundred kilograms.";

    public override string Cures => "Longer legs, or points nearer together.";

    public override Publication Source => Handbook.RiggingStandards.AsmeB309;

    protected override IEnumerable<Case> Cases(Plan plan) => plan.Rigging.Bridles.Where(bridle => bridle.Widest.Value is not null).Select(bridle => new Case(bridle));

    protected override Said Say(Case found) => new($"Bridle {found.Bridle.Name}: {found.Bridle.Widest.Value!.Value} between its legs, the flattest {UnitsNet.Angle.FromDegrees(found.Flattest)} from the horizontal.", "Longer legs, or points nearer together.", $"{found.Bridle.Widest.Value!.Value}");

    private const double Widest = 120;
    private const double Flattest = 30;

    private static Verdict Judge(BridlePlan bridle) => bridle.Widest.Value!.Value.Degrees >= Widest || bridle.Legs.Any(leg => leg.FromHorizontal < Flattest) ? Verdict.Fails : Verdict.Holds;

    internal sealed record Case(BridlePlan Bridle) : Judgement(Bridle.Address / "flat", Bridle.Bridle.At, Judge(Bridle), Bridle.Widest.RestsOn)
    {
        /// <summary>Of its legs, degrees from the horizontal.</summary>
        public double Flattest => Bridle.Legs.Min(leg => leg.FromHorizontal);
    }
}
