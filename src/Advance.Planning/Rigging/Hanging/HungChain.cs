using UnitsNet;

namespace Advance.Planning;

/// <summary>
/// A frame and boxes hung from each other, pin below pin, each turned by its splay. It is stiff: where the frame tilts, all of it tilts along.
/// </summary>
public sealed class HungChain
{
    private readonly HangState level;

    /// <summary>Makes one.</summary>
    /// <param name="frame">The frame first, then what is fixed to it.</param>
    /// <param name="boxes">From the top, one or more.</param>
    /// <exception cref="ArgumentException">There is no frame or no box, or a number is out of its range.</exception>
    public HungChain(IReadOnlyList<HungMass> frame, IReadOnlyList<HungBox> boxes)
    {
        if (frame.Count == 0 || frame.Any(mass => !(mass.Weight >= 0) || !double.IsFinite(mass.Weight + mass.Forward + mass.Down)))
        {
            throw new ArgumentException("A hang has a frame that weighs something.", nameof(frame));
        }

        if (boxes.Count == 0 || !boxes.All(IsSound))
        {
            throw new ArgumentException("A hang has boxes with weight and height.", nameof(boxes));
        }

        (Frame, Boxes) = (frame, boxes);
        Weight = frame.Sum(mass => mass.Weight) + boxes.Sum(box => box.Weight);
        level = At(Angle.Zero);
    }

    /// <summary>The frame and what is fixed to it.</summary>
    public IReadOnlyList<HungMass> Frame { get; }

    /// <summary>From the top.</summary>
    public IReadOnlyList<HungBox> Boxes { get; }

    /// <summary>W, N: all of it.</summary>
    public double Weight { get; }

    /// <summary>Where everything is when the frame is tilted.</summary>
    /// <param name="tilt">a, nose down positive.</param>
    public HangState At(Angle tilt) => new(this, tilt);

    /// <summary>
    /// How far it tilts on one hoist, its centre of gravity below the hole: <c>a = atan((x_g − p) / (u − z_g))</c>, taken with the frame level; null
    /// where the centre of gravity is not below the hole.
    /// </summary>
    /// <param name="pick">The hole.</param>
    public Angle? FreeTilt(PickHole pick) => pick.Up > level.Centre.Z ? Under(pick.Forward, pick.Up) : null;

    /// <summary>
    /// Between which tilts each of two hoists carries at least a share of the weight and no more than it may; null where there are none. Where the front
    /// hoist has a share, the centre of gravity hangs below that point of the line between the holes which divides it so.
    /// </summary>
    /// <param name="front">The front hole.</param>
    /// <param name="rear">The rear hole, behind it.</param>
    /// <param name="least">The least share of each, 0 to 0.5.</param>
    /// <param name="frontMost">The most for the front one, N; null where it is not asked.</param>
    /// <param name="rearMost">The most for the rear one, N; null where it is not asked.</param>
    /// <exception cref="ArgumentException">The holes do not stand behind each other, or the centre of gravity is not below the line between them.</exception>
    public TiltRange? Tilts(PickHole front, PickHole rear, double least, double? frontMost = null, double? rearMost = null)
    {
        HangState.Check(front, rear);
        var (length, rise) = (front.Forward - rear.Forward, front.Up - rear.Up);
        if (length * (level.Centre.Z - rear.Up) >= rise * (level.Centre.X - rear.Forward))
        {
            throw new ArgumentException("The centre of gravity of a hang is below its holes.", nameof(front));
        }

        var lower = Math.Max(least, 1 - ((rearMost ?? double.PositiveInfinity) / Weight));
        var upper = Math.Min(1 - least, (frontMost ?? double.PositiveInfinity) / Weight);
        Angle Sharing(double share) => Under(rear.Forward + (share * length), rear.Up + (share * rise));

        // Nose down swings the weight back, away from the front hoist: its largest share is at the least tilt.
        return lower <= upper ? new(Sharing(upper), Sharing(lower)) : null;
    }

    private static bool IsSound(HungBox box) =>
        box is { Weight: > 0, PinToPin: > 0, Behind: >= 0, Ahead: >= 0, LinkArm: null or > 0 }
        && double.IsFinite(box.Weight + box.Forward + box.Down + box.PinToPin + box.Behind + box.Ahead + box.Splay.Radians);

    private Angle Under(double forward, double up) => Angle.FromRadians(Math.Atan2(level.Centre.X - forward, up - level.Centre.Z));
}
