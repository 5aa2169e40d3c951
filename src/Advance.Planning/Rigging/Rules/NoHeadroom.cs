using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Venues;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>rigging/no-headroom</c></summary>
internal sealed class NoHeadroom : Rule<NoHeadroom.Case>
{
    public override string Name => "rigging/no-headroom";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "Between a truss at its trim and the point there is less room than hoist, slings and steels take.";

    public override string Why => "It stops short of its trim, hook to hook.";

    public override string Cures => "A lower trim, a shorter hoist, or shorter slings.";

    public override Publication Source => Publication.Arithmetic;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        from truss in plan.Rigging.Trusses
        from pick in truss.Picks
        let point = plan.Rigging.PointOf(pick)
        where point is not null && point.Height.IsKnown && truss.Placed.Trim.Value is { } trim && trim < point.Height.Value && pick.Placed.Hoist?.Kind?.Hoist?.Headroom is { IsKnown: true }
        select new Case(truss, pick, point);

    protected override Said Say(Case found) => new($"{found.Pick.Name}: {found.Room} between truss and {found.Point.Name}, and hoist and gear take {found.Takes}.", "A lower trim, a shorter hoist, or shorter slings.", $"{found.Room} of {found.Takes}");

    internal sealed record Case(TrussPlan Truss, PickPlan Pick, RoofPoint Point) : Judgement(
        Pick.Address / "headroom", Pick.Placed.Pick.At, RoomOf(Truss, Point) >= TakesOf(Pick) ? Verdict.Holds : Verdict.Fails, Truss.Placed.Trim.RestsOn.With(Doubts.Of(Point.Height.Doubt)))
    {
        /// <summary>From the top of the truss to the point.</summary>
        public Length Room => RoomOf(Truss, Point);

        /// <summary>Hook to hook, and all that is between.</summary>
        public Length Takes => TakesOf(Pick);

        private static Length RoomOf(TrussPlan truss, RoofPoint point) =>
            point.Height.Value - truss.Placed.Trim.Value!.Value - (truss.Placed.Kind?.Size is { IsKnown: true, Value.Height: { } high } ? high : Length.Zero);

        private static Length TakesOf(PickPlan pick) => pick.Placed.Hoist!.Kind!.Hoist!.Headroom!.Value.Value + pick.GearLength;
    }
}
