using Advance.Handbook;
using CsCheck;

namespace Advance.Tests.Handbook.Rigging;

/// <summary>What holds for any bridle: forces at the apex add to nothing, and lengths lead back to the apex.</summary>
public sealed class BridlePropertyTests
{
    private static readonly Gen<double> Metres = Gen.Double[0.5, 8];

    private static readonly Gen<RiggingPoint> Anchor =
        from x in Gen.Double[-6, 6] from y in Gen.Double[-6, 6] from z in Gen.Double[5, 9] select new RiggingPoint(x, y, z);

    [Fact]
    public void Two_legs_carry_the_load_and_pull_alike() => Gen.Select(Metres, Metres, Metres, Metres).Sample(
        (firstDrop, firstAway, secondDrop, secondAway) =>
        {
            var bridle = TwoLegBridle.FromApex(1000, firstDrop, firstAway, secondDrop, secondAway);
            Assert.Equal(1000, bridle.First.Vertical + bridle.Second.Vertical, 1e-9);
            Assert.Equal(bridle.HorizontalPull, bridle.First.Horizontal, 1e-9);
            Assert.Equal(bridle.HorizontalPull, bridle.Second.Horizontal, 1e-9);
            Assert.All([bridle.First, bridle.Second], leg => Assert.Equal(leg.Tension, Math.Sqrt((leg.Vertical * leg.Vertical) + (leg.Horizontal * leg.Horizontal)), 1e-9));
        });

    [Fact]
    public void Lengths_of_two_legs_lead_back_to_the_apex() => Gen.Select(Metres, Metres, Metres, Metres).Sample(
        (firstDrop, firstAway, secondDrop, secondAway) =>
        {
            var bridle = TwoLegBridle.FromApex(1000, firstDrop, firstAway, secondDrop, secondAway);
            var again = TwoLegBridle.FromLengths(1000, firstAway + secondAway, secondDrop - firstDrop, bridle.First.Length, bridle.Second.Length)!;
            Assert.Equal(firstDrop, again.Apex.Drop, 1e-6);
            Assert.Equal(firstAway, again.Apex.Away, 1e-6);
            Assert.True(again.IsTaut);
        });

    [Fact]
    public void Three_legs_add_to_the_load_alone() => Gen.Select(Anchor, Anchor, Anchor).Where(IsWide).Sample(
        (first, second, third) =>
        {
            RiggingPoint[] anchors = [first, second, third];
            var bridle = ThreeLegBridle.FromApex(1000, default, first, second, third);
            var sum = anchors.Zip(bridle.Legs, (anchor, leg) => (leg.Tension / anchor.Length) * anchor).Aggregate((left, right) => left + right);
            Assert.Equal(0, sum.X, 1e-6);
            Assert.Equal(0, sum.Y, 1e-6);
            Assert.Equal(1000, sum.Z, 1e-6);

            // Slack where the apex, seen from above, lies outside the triangle of the anchors; right on its edge a leg carries nothing either way.
            Assert.True(bridle.Legs.Any(leg => Math.Abs(leg.Tension) < 1e-6) || IsInside(first, second, third) == (bridle.Slack.Count == 0));
        });

    [Fact]
    public void Lengths_of_three_legs_lead_back_to_the_apex() => Gen.Select(Anchor, Anchor, Anchor).Where(IsWide).Sample(
        (first, second, third) =>
        {
            RiggingPoint[] anchors = [first, second, third];
            var apex = ThreeLegBridle.ApexOf(anchors, [.. anchors.Select(anchor => anchor.Length)])!.Value;
            Assert.All(anchors, anchor => Assert.Equal(anchor.Length, (anchor - apex).Length, 1e-6));
            Assert.Equal(0, apex.Length, 1e-4);
        });

    private static bool IsInside(RiggingPoint first, RiggingPoint second, RiggingPoint third)
    {
        double[] sides = [first.Cross(second).Z, second.Cross(third).Z, third.Cross(first).Z];
        return sides.All(side => side > 0) || sides.All(side => side < 0);
    }

    // Three anchors that do not lie in one line or one plane with the apex, the plane through them passing above it.
    private static bool IsWide((RiggingPoint First, RiggingPoint Second, RiggingPoint Third) anchors)
    {
        var normal = (anchors.Second - anchors.First).Cross(anchors.Third - anchors.First);
        var height = normal.Dot(anchors.First) / normal.Z;
        return Math.Abs(normal.Z) > 4 && height > 1 && Math.Abs(anchors.First.Dot(anchors.Second.Cross(anchors.Third))) > 20;
    }
}
