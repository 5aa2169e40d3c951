using Advance.Domain.Facts;
using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>A hang, and what it asks of its frame, its joints and what holds it.</summary>
/// <param name="Placed">What holds it.</param>
/// <param name="Stack">Its boxes, as they are joined and driven.</param>
/// <param name="Loads">What hangs: frame, what is fixed to it, leads, boxes from the top.</param>
/// <param name="Weight">All of it.</param>
/// <param name="Missing">What is not known without which it cannot be worked out, in words; empty where it can.</param>
public sealed record HangPlan(PlacedHang Placed, StackPlan Stack, IReadOnlyList<CarriedLoad> Loads, Figure<Mass> Weight, IReadOnlyList<string> Missing)
{
    private static readonly Figure<Length> NoLength = new(null, Doubts.None, Reason.Derived.It);

    private static readonly Figure<Angle> NoAngle = new(null, Doubts.None, Reason.Derived.It);

    /// <summary>Its name in the plan.</summary>
    public Address Address => Placed.Address;

    /// <summary>Its name on paper.</summary>
    public string Name => Placed.Name;

    /// <summary>The address that both of a mirrored pair share.</summary>
    public Address Written => Address.Of("rigging") / Placed.Hang.Name;

    /// <summary>Frame and boxes as statics sees them; null where something is missing.</summary>
    public HungChain? Chain { get; init; }

    /// <summary>As it hangs; null where something is missing.</summary>
    public HangState? State { get; init; }

    /// <summary>Of its frame, nose down positive.</summary>
    public Figure<Angle> Tilt { get; init; } = NoAngle;

    /// <summary>The least tilt at which both picks carry their share, where there are two.</summary>
    public Figure<Angle> LeastTilt { get; init; } = NoAngle;

    /// <summary>The most tilt at which both picks carry their share, where there are two.</summary>
    public Figure<Angle> MostTilt { get; init; } = NoAngle;

    /// <summary>How far its centre of gravity is ahead of the front pin, as it hangs; negative behind.</summary>
    public Figure<Length> Centre { get; init; } = NoLength;

    /// <summary>How far its two hooks are reckoned off level while it moves; null where they are not two.</summary>
    public Figure<Length>? UnevenMoving { get; init; }

    /// <summary>What the wind does to it; null indoors.</summary>
    public HangWind? Wind { get; init; }

    /// <summary>How low it may come at the lowest, above the floor; null where nobody says.</summary>
    public Figure<Length>? StaysAbove { get; init; }

    /// <summary>Its boxes, from the top.</summary>
    public IReadOnlyList<HangBoxPlan> Boxes { get; init; } = [];

    /// <summary>In the order written.</summary>
    public IReadOnlyList<HangPickPlan> Picks { get; init; } = [];

    /// <summary>The holes of its frame, from the front.</summary>
    public IReadOnlyList<HangHole> Holes { get; init; } = [];

    /// <summary>What hangs under the frame.</summary>
    public Figure<Mass> UnderFrame { get; init; } = new(null, Doubts.None, Reason.Derived.It);

    /// <summary>How far its lowest edge is below its hole, of two below the front one.</summary>
    public Figure<Length> Drop { get; init; } = NoLength;

    /// <summary>Of its lowest edge above the floor.</summary>
    public Figure<Length> Bottom { get; init; } = NoLength;

    /// <summary>Of its hole above the floor, of two of the front one.</summary>
    public Figure<Length> PickHeight { get; init; } = NoLength;

    /// <summary>The open questions behind it.</summary>
    public Doubts RestsOn => Weight.RestsOn.With(Tilt.RestsOn).With(Centre.RestsOn).With(Doubts.Of(Placed.Flown.PullBack?.Pull.Doubt)).With(Doubts.Of(Placed.Flown.PullBack?.Up.Doubt));

    /// <summary>Its numbers.</summary>
    internal IEnumerable<Stated> Figures =>
    [
        Stated.Of(Address / "weight", $"{Name}, all that hangs", Weight),
        Stated.Of(Address / "under-frame", $"{Name}, under its frame", UnderFrame),
        Stated.Of(Address / "tilt", $"{Name}, tilt of its frame, nose down", Tilt),
        Stated.Of(Address / "centre", $"{Name}, centre of gravity ahead of its front pin", Centre),
        .. Picks.Count != 2 ? [] : new[]
        {
            Stated.Of(Address / "least-tilt", $"{Name}, least tilt at which both picks carry", LeastTilt),
            Stated.Of(Address / "most-tilt", $"{Name}, most tilt at which both picks carry", MostTilt),
        },
        Stated.Of(Address / "drop", $"{Name}, lowest edge below its hole", Drop),
        Stated.Of(Address / "bottom", $"{Name}, lowest edge above the floor", Bottom),
        Stated.Of(Address / "pick-height", $"{Name}, its hole above the floor", PickHeight),
        .. Holes.Select(hole => Stated.Of(Address / "hole" / hole.Hole.Name, $"{Name} hole {hole.Hole.Name}, tilt on that hole alone", hole.Tilt)),
        .. Boxes.SelectMany(box => new[]
        {
            Stated.Of(Address / "box" / box.Box.Position / "tilt", $"{box.Box.Piece.Name}, looks down", box.Tilt),
            Stated.Of(Address / "box" / box.Box.Position / "below", $"{box.Box.Piece.Name}, on the joint above it", box.Below),
            Stated.Of(Address / "box" / box.Box.Position / "rear", $"{box.Box.Piece.Name}, rear link, moving", box.Rear),
            Stated.Of(Address / "box" / box.Box.Position / "front", $"{box.Box.Piece.Name}, front pins, moving", box.Front),
        }),
        .. Wind is null ? [] : new[]
        {
            Stated.Of(Address / "wind", $"{Name}, what the wind pushes", Wind.Push),
            Stated.Of(Address / "swing", $"{Name}, how far it swings in that", Wind.Swing),
            Stated.Of(Address / "pull", $"{Name}, what pulls at its points then, all together", Wind.Pull),
        },
        .. UnevenMoving is null ? [] : new[] { Stated.Of(Address / "uneven", $"{Name}, how uneven it is reckoned while it moves", UnevenMoving) },
        .. Picks.SelectMany(pick => pick.Pick.Figures),
        .. Picks.Select(pick => Stated.Of(pick.Pick.Address / "off-plumb", $"{pick.Pick.Name}, chain off plumb", pick.OffPlumb)),
    ];
}
