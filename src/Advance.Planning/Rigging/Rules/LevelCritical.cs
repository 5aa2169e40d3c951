using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Wording;

namespace Advance.Planning;

/// <summary><c>rigging/level-critical</c></summary>
internal sealed class LevelCritical : Rule<LevelCritical.Case>
{
    public override string Name => "rigging/level-critical";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A truss holds only while its hoists are level: however uneven, a hoist, a point or the truss would be over its limit.";

    public override string Why => "One chain a few links short takes its neighbours' load, and nobody on the ground sees it.";

    public override string Cures => "Level within what the hoist table says, read the load cells, level again on the way; or a stronger part where it says.";

    public override Publication Source => Handbook.RiggingStandards.EventRigging;

    protected override IEnumerable<Case> Cases(Plan plan) => plan.Rigging.Trusses.Where(truss => truss.BoundUse is not null && truss.Picks.Count > 2).Select(truss => new Case(truss));

    protected override Said Say(Case found) => found.Truss.Tolerances.Select(tolerance => tolerance.Least).Min() is { } least
        ? new($"{found.Truss.Name} holds only level: {new FineLength(UnitsNet.Length.FromMeters(least))} high or low at one hoist is the most; however uneven it would come to {UnitsNet.Ratio.FromDecimalFractions(found.Truss.BoundUse!.Share)} ({found.Truss.BoundUse.Case.Said}).", "Level within that, read the load cells, level again on the way.", $"{UnitsNet.Ratio.FromDecimalFractions(found.Truss.BoundUse.Share)}")
        : new($"{found.Truss.Name} holds only level: however uneven it would come to {UnitsNet.Ratio.FromDecimalFractions(found.Truss.BoundUse!.Share)} ({found.Truss.BoundUse.Case.Said}).", "Level it, read the load cells, level again on the way.", $"{UnitsNet.Ratio.FromDecimalFractions(found.Truss.BoundUse.Share)}");

    internal sealed record Case(TrussPlan Truss)
        : Judgement(Truss.Address / "level", Truss.Placed.Truss.At, Truss.BoundUse!.Share <= 1 ? Verdict.Holds : Verdict.Fails, Truss.RestsOn);
}
