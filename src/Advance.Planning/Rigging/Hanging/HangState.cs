using UnitsNet;

namespace Advance.Planning;

/// <summary>A hang at one tilt of its frame.</summary>
public sealed class HangState
{
    private readonly HungChain hang;

    internal HangState(HungChain hang, Angle tilt)
    {
        (this.hang, Tilt) = (hang, tilt);
        Boxes = Place(hang, tilt.Radians);
        Centre = CentreOf(0, isWhole: true).At;
        Lowest = Boxes.SelectMany(box => box.Edges).Append(Boxes[^1].LowerPin).MinBy(edge => edge.Z);
        Joints = [.. Enumerable.Range(0, Boxes.Count).Select(JointOf)];
    }

    /// <summary>Of the frame, nose down positive.</summary>
    public Angle Tilt { get; }

    /// <summary>The boxes from the top.</summary>
    public IReadOnlyList<PlacedBox> Boxes { get; }

    /// <summary>Centre of gravity of frame and boxes.</summary>
    public SidePoint Centre { get; }

    /// <summary>The lowest edge of any box.</summary>
    public SidePoint Lowest { get; }

    /// <summary>The joint above each box.</summary>
    public IReadOnlyList<HangJoint> Joints { get; }

    /// <summary>Where a hole of the frame is.</summary>
    public SidePoint PlaceOf(PickHole pick) => default(SidePoint).Along(Tilt.Radians, pick.Forward, -pick.Up);

    /// <summary>How far the lowest edge is below a hole, m.</summary>
    public double Below(PickHole pick) => PlaceOf(pick).Z - Lowest.Z;

    /// <summary>
    /// What two hoists carry: <c>R_front = W (x_g − x_rear) / (x_front − x_rear)</c>, the rear one the rest, N. A negative one would have to push: it is
    /// slack, and the hang swings to the tilt it has on the other alone.
    /// </summary>
    /// <param name="front">The front hole.</param>
    /// <param name="rear">The rear hole, behind it.</param>
    /// <exception cref="ArgumentException">The holes do not stand behind each other, as it is tilted.</exception>
    public (double Front, double Rear) Picks(PickHole front, PickHole rear)
    {
        Check(front, rear);
        var (ahead, behind) = (PlaceOf(front).X, PlaceOf(rear).X);
        if (!(ahead > behind))
        {
            throw new ArgumentException("Tilted that far the front hole is not in front.", nameof(front));
        }

        var share = (Centre.X - behind) / (ahead - behind);
        return (hang.Weight * share, hang.Weight * (1 - share));
    }

    internal static void Check(PickHole front, PickHole rear)
    {
        if (!(front.Forward > rear.Forward))
        {
            throw new ArgumentException("The front hole is in front of the rear one.", nameof(front));
        }
    }

    private static List<PlacedBox> Place(HungChain hang, double tilt)
    {
        var boxes = new List<PlacedBox>(hang.Boxes.Count);
        var pin = default(SidePoint);
        foreach (var box in hang.Boxes)
        {
            tilt += box.Splay.Radians;
            boxes.Add(new(box, Angle.FromRadians(tilt), pin, pin.Along(tilt, 0, box.PinToPin), pin.Along(tilt, box.Forward, box.Down)));
            pin = boxes[^1].LowerPin;
        }

        return boxes;
    }

    private (double Weight, SidePoint At) CentreOf(int first, bool isWhole)
    {
        var parts = Boxes.Skip(first).Select(box => (box.Box.Weight, box.Centre));
        var all = isWhole ? parts.Concat(hang.Frame.Select(mass => (mass.Weight, default(SidePoint).Along(Tilt.Radians, mass.Forward, mass.Down)))) : parts;
        var (weight, x, z) = (0.0, 0.0, 0.0);
        foreach (var (part, at) in all)
        {
            (weight, x, z) = (weight + part, x + (part * at.X), z + (part * at.Z));
        }

        return (weight, new(x / weight, z / weight));
    }

    // About the front pin the link holds what hangs below; its line runs along whatever the box hangs on.
    private HangJoint JointOf(int index)
    {
        var (weight, centre) = CentreOf(index, isWhole: false);
        if (Boxes[index].Box.LinkArm is not { } arm)
        {
            return new(weight, null, null);
        }

        var rear = weight * (Boxes[index].Pin.X - centre.X) / arm;
        var along = (index == 0 ? Tilt : Boxes[index - 1].Tilt).Radians;
        var pull = default(SidePoint).Along(along, 0, -rear);
        return new(weight, rear, new SidePoint(-pull.X, weight - pull.Z));
    }
}
