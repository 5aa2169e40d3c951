using Advance.Domain.Stocks;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;

namespace Advance.Reading.Stocks;

/// <summary>How loudspeakers hang, and what they hang under, by their maker.</summary>
internal static class FlyingShapes
{
    public static readonly RecordShape<Flying> Box = new("flying", "How a loudspeaker hangs, seen from its upper front pin along its own axes.", keys =>
    {
        var pins = keys.Asked("pin-to-pin", Written.Length, "From its upper front pin to its lower.");
        var behind = keys.Open("centre-behind", Written.As(Lengths.Signed), "How far its centre of gravity is behind the pin.");
        var below = keys.Open("centre-below", Written.Length, "How far its centre of gravity is below the pin.");
        var back = keys.Open("back", Written.Length, "How far its back is behind the pins.");
        var front = keys.Open("front", Written.Length, "How far its front is ahead of the pins; without it not at all.");
        var splays = keys.Any("splays", Written.List(Written.Angle), "The angles to the box above that its links allow.");
        var arm = keys.Open("link-arm", Written.Length, "How far the line of its rear link is from its upper front pin.");
        var rear = keys.Open("rear-limit", Written.As(Quantities.Force), "The most that its rear link may bear.");
        var pin = keys.Open("front-limit", Written.As(Quantities.Force), "The most that its front pins may bear, together.");
        return row => new Flying(pins(row))
        {
            CentreBehind = behind(row),
            CentreBelow = below(row),
            Back = back(row),
            Front = front(row),
            Splays = splays(row),
            LinkArm = arm(row),
            RearLimit = rear(row),
            FrontLimit = pin(row),
        };
    });

    private static readonly RecordShape<FrameHole> Hole = new("frame-hole", "A hole that a frame may be held by, seen from the front pin that the first box hangs on.", keys =>
    {
        var name = keys.Needed("hole", Written.Name, "The maker's name for it.");
        var behind = keys.Asked("behind", Written.As(Lengths.Signed), "How far behind the front pin; negative ahead of it.");
        var above = keys.Asked("above", Written.Length, "How far above the front pin.");
        return row => new FrameHole(name(row), behind(row), above(row));
    });

    private static readonly RecordShape<FrameLimit> Limit = new("frame-limit", "How many boxes a frame may carry between which tilts.", keys =>
    {
        var boxes = keys.Needed("boxes", Written.Between("boxes", 1, 100), "So many, or fewer.");
        var from = keys.Needed("from", Written.Tilt, "The least tilt, as far up as its nose may look.");
        var to = keys.Needed("to", Written.Tilt, "The most tilt, as far down as its nose may look.");
        var box = keys.Defaulted("box", Written.Name, "", "The kind of box that the row is for.", "any");
        return row => new FrameLimit(boxes(row), from(row), to(row)) { Box = box(row) };
    });

    public static readonly RecordShape<FlyingFrame> Frame = new("flying-frame", "What only a flying frame has.", keys =>
    {
        var below = keys.Defaulted("below", Written.Name, "", "Its mating face.", "none");
        var holes = keys.Any("holes", Written.Table(Hole), "Where it may be held.");
        var behind = keys.Open("centre-behind", Written.As(Lengths.Signed), "How far its centre of gravity is behind the front pin.");
        var above = keys.Open("centre-above", Written.As(Lengths.Signed), "How far its centre of gravity is above the front pin; without it level with it.");
        var rating = keys.Open("rating", Written.As(Quantities.Load), "What may hang under it, all together.");
        var limits = keys.Any("limits", Written.Table(Limit), "How many boxes it may carry between which tilts.");
        return row => new FlyingFrame(below(row), holes(row)) { CentreBehind = behind(row), CentreAbove = above(row), Rating = rating(row), Limits = limits(row) };
    });
}
