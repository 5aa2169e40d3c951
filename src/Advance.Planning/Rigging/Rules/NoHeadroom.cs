using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>rigging/no-headroom</c></summary>
internal sealed class NoHeadroom : Rule<NoHeadroom.Case>
{
    public override string Name => "rigging/no-headroom";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "Between a truss or a hang at its trim and the point there is less room than hoist, slings and steels take.";

    public override string Why => "It stops short of its trim, hook to hook.";

    public override string Cures => "A lower trim, a shorter hoist, or shorter slings.";

    public override Publication Source => Publication.Arithmetic;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        from hook in Hooks(plan)
        let point = plan.Rigging.Above(hook.Pick)
        where point is not null && hook.Height.Value is { } low && low < point.Height && hook.Pick.Placed.Hoist?.Kind?.Hoist?.Headroom is { IsKnown: true }
        select new Case(hook.Pick, hook.Height, hook.Above, point, hook.What);

    protected override Said Say(Case found) => new($"{found.Pick.Name}: {found.Room} between {found.What} and {found.Point.Name}, and hoist and gear take {found.Takes}.", "A lower trim, a shorter hoist, or shorter slings.", $"{found.Room} of {found.Takes}");

    // What is picked up: the lower chord of a truss, with how high that is, and the hole of a frame.
    private static IEnumerable<(PickPlan Pick, Figure<Length> Height, Length Above, string What)> Hooks(Plan plan) =>
    [
        .. plan.Rigging.Trusses.SelectMany(truss => truss.Picks.Select(pick => (pick, truss.Placed.Trim, truss.Placed.Kind?.Size is { IsKnown: true, Value.Height: { } high } ? high : Length.Zero, "truss"))),
        .. plan.Rigging.Hangs.SelectMany(hang => hang.Picks.Select(pick => (pick.Pick, pick.Height, Length.Zero, "frame"))),
    ];

    internal sealed record Case(PickPlan Pick, Figure<Length> Hook, Length Above, HangsOn Point, string What) : Judgement(
        Pick.Address / "headroom", Pick.Placed.Pick.At, RoomOf(Hook, Above, Point) >= TakesOf(Pick) ? Verdict.Holds : Verdict.Fails, Hook.RestsOn.With(Point.RestsOn))
    {
        /// <summary>From what is picked up to the point.</summary>
        public Length Room => RoomOf(Hook, Above, Point);

        /// <summary>Hook to hook, and all that is between.</summary>
        public Length Takes => TakesOf(Pick);

        private static Length RoomOf(Figure<Length> hook, Length above, HangsOn point) => point.Height - hook.Value!.Value - above;

        private static Length TakesOf(PickPlan pick) => pick.Placed.Hoist!.Kind!.Hoist!.Headroom!.Value.Value + pick.GearLength;
    }
}
