using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>rigging/needs-load-cells</c></summary>
internal sealed class NeedsLoadCells : Rule<NeedsLoadCells.Case>
{
    public override string Name => "rigging/needs-load-cells";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "With one hoist gone, another part would be over its limit, and no load cells stop all hoists together.";

    public override string Why => "More than two chains on a stiff truss share by luck; only a cell shows what each carries.";

    public override string Cures => "Load cells with a group stop for under- and overload, set by the hoist table; or stronger hoists.";

    public override Publication Source => Handbook.RiggingStandards.EventRigging;

    // Two hoists share by statics alone.
    protected override IEnumerable<Case> Cases(Plan plan) => plan.Rigging.Trusses.Where(truss => truss.GoneUse is not null && truss.Picks.Count > 2).Select(truss => new Case(truss));

    protected override Said Say(Case found) => new(
        $"{found.Truss.Name}: with {found.Truss.GoneUse!.Case.Said} it would come to {UnitsNet.Ratio.FromDecimalFractions(found.Truss.GoneUse.Share)} of what a part bears, and no load cells stop its hoists together.",
        "Load cells with a group stop, or stronger hoists.",
        $"{UnitsNet.Ratio.FromDecimalFractions(found.Truss.GoneUse.Share)}");

    internal sealed record Case(TrussPlan Truss) : Judgement(
        Truss.Address / "gone",
        Truss.Placed.Truss.At,
        Truss.GoneUse!.Share <= 1 || Truss.Placed.Truss.HasGroupStop is { IsKnown: true, Value: true } ? Verdict.Holds : Verdict.Fails,
        Truss.RestsOn);
}
