using Advance.Planning;
using CsCheck;
using UnitsNet;

namespace Advance.Tests.Planning.Rigging;

/// <summary>Hangs of boxes: by hand, as stated beside each, and what statics asks of any.</summary>
public sealed class HungChainTests
{
    private static readonly PickHole Front = new(0.1, 0.2);
    private static readonly PickHole Rear = new(-0.7, 0.2);

    private static readonly Gen<HungBox> Box =
        from weight in Gen.Double[100, 1000]
        from forward in Gen.Double[-0.5, -0.1]
        from down in Gen.Double[0.05, 0.3]
        from height in Gen.Double[0.2, 0.5]
        from splay in Gen.Double[0, 10]
        from arm in Gen.Double[0.3, 0.7]
        select new HungBox(weight, forward, down, height, Angle.FromDegrees(splay)) { Behind = 0.6, LinkArm = arm };

    private static readonly Gen<(HungChain Hang, Angle Tilt)> Any =
        from boxes in Box.Array[1, 16]
        from frame in Gen.Double[100, 900]
        from tilt in Gen.Double[-8, 8]
        select (new HungChain([new HungMass(frame, -0.3, -0.1)], boxes), Angle.FromDegrees(tilt));

    [Fact]
    public void Straight_hang_by_hand()
    {
        // Frame 200 N at 0.3 m behind the pin and 0.1 above; two boxes of 400 N, 0.4 behind, 0.15 down, 0.3 high, one below the other.
        // x = (200 · -0.3 + 800 · -0.4) / 1000 = -0.38; z = (200 · 0.1 - 400 · 0.15 - 400 · 0.45) / 1000 = -0.22.
        var state = Straight().At(Angle.Zero);
        Close((-0.38, -0.22), state.Centre);
        Close((0, -0.3), state.Boxes[1].Pin);
        Close((0, -0.6), state.Boxes[1].LowerPin);

        // R = 1000 · (-0.38 + 0.7) / 0.8 = 400 in front, 600 behind.
        var (front, rear) = state.Picks(Front, Rear);
        Assert.Equal(400, front, 1e-9);
        Assert.Equal(600, rear, 1e-9);
        Assert.Equal(0.8, state.Below(Front), 1e-9);

        // Rear link of the upper joint: 800 N, 0.4 m behind the pin, 0.5 m of arm: 640 N of pull; the front pin carries 160. The lower: 320 and 80.
        Assert.Equal([800, 400], state.Joints.Select(joint => joint.Below));
        Assert.Equal(640, state.Joints[0].Rear!.Value, 1e-9);
        Assert.Equal(160, state.Joints[0].FrontForce!.Value, 1e-9);
        Assert.Equal(320, state.Joints[1].Rear!.Value, 1e-9);
        Close((0, 80), state.Joints[1].Front!.Value);
    }

    [Fact]
    public void Splayed_box_by_hand()
    {
        // A box turned down by 30°: d = (-0.5, -0.8660), f = (0.8660, -0.5). Centre 0.4 behind and 0.2 down: x = -0.3464 - 0.1, z = 0.2 - 0.1732.
        // Lower pin 0.6 along d: (-0.3, -0.5196). Back edge 0.5 behind the lower pin: z = -0.5196 + 0.25; so the pin is the lowest.
        var hang = new HungChain([new HungMass(0, 0, 0)], [new HungBox(500, -0.4, 0.2, 0.6, Angle.FromDegrees(30)) { Behind = 0.5 }]);
        var state = hang.At(Angle.Zero);
        Close((-0.44641, 0.02679), state.Boxes[0].Centre, 1e-5);
        Close((-0.3, -0.51962), state.Boxes[0].LowerPin, 1e-5);
        Close((-0.3, -0.51962), state.Lowest, 1e-5);
        Assert.Null(state.Joints[0].Rear);
        Assert.Null(state.Joints[0].FrontForce);

        // Turned up the back edge hangs lowest: at 30° up, f = (0.8660, 0.5), d = (0.5, -0.8660): z = -0.5196 - 0.25.
        Assert.Equal(-0.76962, hang.At(Angle.FromDegrees(-60)).Lowest.Z, 1e-5);
    }

    [Fact]
    public void Frame_tilted_by_hand()
    {
        // The straight hang 10° nose down: x = -0.38 · 0.98481 - 0.22 · 0.17365 = -0.41243; holes at 0.13321 and -0.65464.
        // Front 1000 · (-0.41243 + 0.65464) / 0.78785 = 307.4: tilting down takes weight off the front.
        var state = Straight().At(Angle.FromDegrees(10));
        Assert.Equal(-0.41243, state.Centre.X, 1e-5);
        Assert.Equal(307.4, state.Picks(Front, Rear).Front, 0.1);
    }

    [Fact]
    public void Free_tilt_on_one_hoist_by_hand()
    {
        // A hole 0.3 m behind the pin and 0.2 above: atan(-0.08 / 0.42) = -10.784°, nose up.
        var tilt = Straight().FreeTilt(new PickHole(-0.3, 0.2))!.Value;
        Assert.Equal(-10.784, tilt.Degrees, 1e-3);
        Assert.Null(Straight().FreeTilt(new PickHole(-0.3, -0.3)));
    }

    [Fact]
    public void Range_of_tilts_with_a_tenth_on_each_by_hand()
    {
        // A tenth in front: centre of gravity under -0.62: atan(0.24 / 0.42) = 29.74° down; nine tenths: under 0.02: atan(-0.40 / 0.42) = -43.60°.
        var range = Straight().Tilts(Front, Rear, 0.1)!;
        Assert.Equal(-43.60, range.Least.Degrees, 0.01);
        Assert.Equal(29.74, range.Most.Degrees, 0.01);
        Assert.True(range.Holds(Angle.Zero));

        // The rear hoist may carry 600 N, which it does level.
        Assert.Equal(0, Straight().Tilts(Front, Rear, 0.1, null, 600)!.Most.Degrees, 1e-9);
        Assert.Null(Straight().Tilts(Front, Rear, 0.1, 450, 450));
    }

    [Fact]
    public void Loads_of_two_hoists_sum_to_the_weight_and_balance_about_the_centre() => Any.Sample(
        one =>
        {
            var state = one.Hang.At(one.Tilt);
            var (front, rear) = state.Picks(Front, Rear);
            Assert.Equal(one.Hang.Weight, front + rear, 1e-9 * one.Hang.Weight);
            var moment = (front * (state.PlaceOf(Front).X - state.Centre.X)) + (rear * (state.PlaceOf(Rear).X - state.Centre.X));
            Assert.Equal(0, moment, 1e-9 * one.Hang.Weight);
        },
        iter: 300);

    [Fact]
    public void On_one_hoist_the_centre_of_gravity_hangs_below_the_hole() => Any.Sample(
        one =>
        {
            var state = one.Hang.At(one.Hang.FreeTilt(Front)!.Value);
            Assert.Equal(state.PlaceOf(Front).X, state.Centre.X, 1e-9);
            Assert.True(state.PlaceOf(Front).Z > state.Centre.Z);
        },
        iter: 300);

    [Fact]
    public void At_the_ends_of_the_range_one_hoist_has_a_tenth_and_between_them_both_have_more() => Any.Sample(
        one =>
        {
            var range = one.Hang.Tilts(Front, Rear, 0.1)!;
            Assert.Equal(0.9, one.Hang.At(range.Least).Picks(Front, Rear).Front / one.Hang.Weight, 1e-9);
            Assert.Equal(0.1, one.Hang.At(range.Most).Picks(Front, Rear).Front / one.Hang.Weight, 1e-9);
            Assert.InRange(one.Hang.At((range.Least + range.Most) / 2).Picks(Front, Rear).Front / one.Hang.Weight, 0.1, 0.9);
        },
        iter: 300);

    [Fact]
    public void Link_and_pin_of_each_joint_hold_what_is_below() => Any.Sample(
        one =>
        {
            var state = one.Hang.At(one.Tilt);
            for (var index = 0; index < state.Boxes.Count; index++)
            {
                var joint = state.Joints[index];
                var x = CentreX(state.Boxes.Skip(index));
                var along = index == 0 ? one.Tilt : state.Boxes[index - 1].Tilt;

                // Up along the link, by its own arm behind the pin; the pin itself has no arm.
                var link = default(SidePoint).Along(along.Radians, 0, -joint.Rear!.Value);
                Assert.Equal(0, link.X + joint.Front!.Value.X, 1e-9 * one.Hang.Weight);
                Assert.Equal(joint.Below, link.Z + joint.Front.Value.Z, 1e-9 * one.Hang.Weight);
                var arm = state.Boxes[index].Box.LinkArm!.Value;
                Assert.Equal(0, (joint.Below * (state.Boxes[index].Pin.X - x)) - (joint.Rear.Value * arm), 1e-9 * one.Hang.Weight);
            }
        },
        iter: 300);

    [Fact]
    public void What_cannot_be_is_refused()
    {
        HungBox box = new(400, -0.4, 0.15, 0.3, Angle.Zero);
        Assert.Throws<ArgumentException>(() => new HungChain([], [box]));
        Assert.Throws<ArgumentException>(() => new HungChain([new HungMass(1, 0, 0)], []));
        Assert.Throws<ArgumentException>(() => new HungChain([new HungMass(1, 0, 0)], [box with { PinToPin = 0 }]));
        Assert.Throws<ArgumentException>(() => Straight().At(Angle.Zero).Picks(Rear, Front));
        Assert.Throws<ArgumentException>(() => Straight().Tilts(new PickHole(0, -1), new PickHole(-0.5, -1), 0.1));
    }

    private static HungChain Straight()
    {
        HungBox box = new(400, -0.4, 0.15, 0.3, Angle.Zero) { LinkArm = 0.5 };
        return new([new HungMass(200, -0.3, -0.1)], [box, box]);
    }

    private static double CentreX(IEnumerable<PlacedBox> boxes)
    {
        var all = boxes.ToList();
        return all.Sum(box => box.Box.Weight * box.Centre.X) / all.Sum(box => box.Box.Weight);
    }

    private static void Close((double X, double Z) expected, SidePoint actual, double tolerance = 1e-9)
    {
        Assert.Equal(expected.X, actual.X, tolerance);
        Assert.Equal(expected.Z, actual.Z, tolerance);
    }
}
