using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>rigging/chain-too-short</c></summary>
internal sealed class ChainTooShort : Rule<ChainTooShort.Case>
{
    public override string Name => "rigging/chain-too-short";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "A hoist has less chain than it is from its point down to the floor.";

    public override string Why => "What it lifts cannot be rigged at waist height: the hook does not come down.";

    public override string Cures => "More chain, or steels at the top.";

    public override Publication Source => Publication.Arithmetic;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        from pick in plan.Rigging.Picks
        let point = plan.Rigging.Above(pick)
        where point is not null && pick.Placed.Hoist?.Kind?.Hoist?.ChainLength is { IsKnown: true }
        select new Case(pick, point, plan.Brief.Company.Policies.Rigging.ChainReserve);

    protected override Said Say(Case found) => new($"{found.Pick.Name}: {found.Pick.Placed.Hoist!.Kind!.Hoist!.ChainLength!.Value.Value} of chain, and {found.Needs} are needed from {found.Point.Name} to the floor, with what stays on the hoist.", "More chain, or steels at the top.", $"{found.Needs}");

    internal sealed record Case(PickPlan Pick, HangsOn Point, Length Reserve)
        : Judgement(Pick.Address / "chain", Pick.Placed.Pick.At, Pick.Placed.Hoist!.Kind!.Hoist!.ChainLength!.Value.Value >= NeedsOf(Pick, Point, Reserve) ? Verdict.Holds : Verdict.Fails, Point.RestsOn)
    {
        /// <summary>Each fall from the point to the floor, less what slings and steels take, and what stays on the hoist.</summary>
        public Length Needs => NeedsOf(Pick, Point, Reserve);

        private static Length NeedsOf(PickPlan pick, HangsOn point, Length reserve) =>
            (pick.Placed.Hoist!.Kind!.Hoist!.Falls * (point.Height - pick.GearLength)) + reserve;
    }
}
