using UnitsNet;

namespace Advance.Domain.Companies;

/// <summary>How long the tasks of a load-in take, and with how many hands.</summary>
public sealed record TaskTimes
{
    /// <summary>The settings shipped.</summary>
    public static readonly TaskTimes Default = new();

    /// <summary><c>van</c>: to empty one.</summary>
    public Work Van { get; init; } = Work.Of(25, 3);

    /// <summary><c>truck</c>: to empty one of 7.5 t.</summary>
    public Work Truck { get; init; } = Work.Of(40, 4);

    /// <summary><c>trailer</c>: to empty a long one over its tail-lift.</summary>
    public Work Trailer { get; init; } = Work.Of(75, 8);

    /// <summary><c>push</c>: for each travelling unit and 50 m; steps double it.</summary>
    public Work Push { get; init; } = Work.Of(1, 1);

    /// <summary><c>deck</c>: to build one on legs.</summary>
    public Work Deck { get; init; } = Work.Of(3, 4);

    /// <summary><c>point</c>: to hang one point, straight down.</summary>
    public Work Point { get; init; } = Work.Of(15, 3);

    /// <summary><c>bridle</c>: to hang one bridle.</summary>
    public Work Bridle { get; init; } = Work.Of(25, 3);

    /// <summary><c>truss</c>: to bolt and sling 12 m of it.</summary>
    public Work Truss { get; init; } = Work.Of(20, 4);

    /// <summary><c>fly</c>: to fly one truss to its trim.</summary>
    public Work Fly { get; init; } = Work.Of(10, 4);

    /// <summary><c>fly-point</c>: to level and secure it at one point.</summary>
    public Work FlyPoint { get; init; } = Work.Of(3, 1);

    /// <summary><c>feeder</c>: to lay one length of up to 63 A.</summary>
    public Work Feeder { get; init; } = Work.Of(3, 2);

    /// <summary><c>heavy-feeder</c>: to lay one length of more than 63 A.</summary>
    public Work HeavyFeeder { get; init; } = Work.Of(5, 4);

    /// <summary><c>dead-test</c>: of one circuit.</summary>
    public Work DeadTest { get; init; } = Work.Of(2, 1);

    /// <summary><c>live-test</c>: of one circuit.</summary>
    public Work LiveTest { get; init; } = Work.Of(1, 1);

    /// <summary><c>stack</c>: to build a stack of three boxes.</summary>
    public Work Stack { get; init; } = Work.Of(15, 4);

    /// <summary><c>hang</c>: to fly a hang of ten boxes, besides the rigger.</summary>
    public Work Hang { get; init; } = Work.Of(45, 4);

    /// <summary><c>desk</c>: to set up a place to mix from.</summary>
    public Work Desk { get; init; } = Work.Of(45, 2);

    /// <summary><c>fixture</c>: to hang one at waist height.</summary>
    public Work Fixture { get; init; } = Work.Of(5, 2);

    /// <summary><c>fixture-cable</c>: to cable one.</summary>
    public Work FixtureCable { get; init; } = Work.Of(3, 1);

    /// <summary><c>fixture-address</c>: to check the address of one.</summary>
    public Work FixtureAddress { get; init; } = Work.Of(1, 1);

    /// <summary><c>focus</c>: to focus one.</summary>
    public Work Focus { get; init; } = Work.Of(2, 1);

    /// <summary><c>input</c>: to set and patch one.</summary>
    public Work Input { get; init; } = Work.Of(2, 1);

    /// <summary><c>line-check</c>: of one line.</summary>
    public Work LineCheck { get; init; } = Work.Of(0.5, 2);

    /// <summary><c>drive-check</c>: of a system, beside its boxes.</summary>
    public Work DriveCheck { get; init; } = Work.Of(15, 1);

    /// <summary><c>drive-check-box</c>: of one box.</summary>
    public Work DriveCheckBox { get; init; } = Work.Of(2, 1);

    /// <summary><c>sound-check</c>: of one act, where the schedule does not say when it is over.</summary>
    public Work SoundCheck { get; init; } = Work.Of(60, 2);

    /// <summary><c>load-out</c>: what it takes of the load-in.</summary>
    public Ratio LoadOut { get; init; } = Ratio.FromPercent(60);

    /// <summary><c>load-out-night</c>: the same at night.</summary>
    public Ratio LoadOutNight { get; init; } = Ratio.FromPercent(75);
}
