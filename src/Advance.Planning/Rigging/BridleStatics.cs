using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Venues;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Works out bridles: where the apex lies, what each leg pulls, and which way.</summary>
internal sealed class BridleStatics(Brief brief, Ground ground)
{
    private static readonly Figure<Angle> NotKnown = new(null, Doubts.None, Reason.Derived.It);

    /// <summary>One bridle with all picks that hang on it.</summary>
    public BridlePlan Of(Bridle bridle, IReadOnlyList<PickPlan> picks)
    {
        var address = Address.Of("rigging") / "bridle" / bridle.Name;
        var rest = Total($"{bridle.Name}, on its apex, at rest", picks.Select(pick => pick.PointAtRest));
        var moving = Total($"{bridle.Name}, on its apex, moving", picks.Select(pick => pick.PointMoving));
        var anchors = bridle.Points.Select(AnchorOf).ToList();
        if (anchors.Exists(anchor => anchor is null) || anchors.Count is < 2 or > 3 || ApexOf(bridle, [.. anchors.Select(anchor => anchor!.Value)], picks) is not { } apex)
        {
            return new BridlePlan(address, bridle, rest, moving, [], NotKnown);
        }

        var legs = anchors.Select(anchor => anchor!.Value - apex).ToList();
        var shares = SharesOf(legs);
        return shares.Count == 0 ? new BridlePlan(address, bridle, rest, moving, [], NotKnown)
            : new BridlePlan(address, bridle, rest, moving, [.. legs.Select((leg, index) => LegOf(bridle, index, leg, shares[index], rest, moving))], Widest(bridle, legs));
    }

    private static BridleLegPlan LegOf(Bridle bridle, int index, RiggingPoint leg, double share, Figure<Mass> rest, Figure<Mass> moving)
    {
        var level = Math.Sqrt((leg.X * leg.X) + (leg.Y * leg.Y));
        var name = $"{bridle.Name}, leg to {bridle.Points[index]}";
        var part = new Figure<double>(share, Doubts.None, Reason.Derived.It);
        var angle = Angle.FromDegrees(Math.Atan2(leg.Z, level) * 180 / Math.PI);
        var from = new Figure<Angle>(angle, Doubts.None, Reason.Derived.It);
        var down = Share($"{name}, straight down, at rest", rest, part);
        return new BridleLegPlan(
            bridle.Points[index],
            leg.Length,
            angle.Degrees,
            level > 0 ? -leg.X / level : 0,
            level > 0 ? -leg.Y / level : 0,
            Sum.Of($"{name}, pull, moving", "T = V / sin α", Statics.Bridles).Put("V", Share($"{name}, straight down, moving", moving, part)).Put("α", from).Gives((vertical, at) => vertical / Math.Sin(at.Radians)),
            down,
            Sum.Of($"{name}, sideways, at rest", "H = V / tan α", Statics.Bridles).Put("V", down).Put("α", from).Gives((vertical, at) => vertical / Math.Tan(at.Radians)),
            share < 0);
    }

    // The share of what hangs that goes straight down on the point of a leg; those of all legs are 1 together.
    private static Figure<Mass> Share(string name, Figure<Mass> whole, Figure<double> part) =>
        Sum.Of(name, "V = F · c", Statics.Bridles).Put("F", whole).Put("c", part).Gives((all, share) => all * share);

    private static IReadOnlyList<double> SharesOf(List<RiggingPoint> legs)
    {
        if (legs.Count == 3)
        {
            var apex = new RiggingPoint(0, 0, 0);
            var flat = Math.Abs(legs[0].Dot(legs[1].Cross(legs[2]))) < 1e-9 * legs[0].Length * legs[1].Length * legs[2].Length;
            return flat ? [] : [.. ThreeLegBridle.FromApex(1, apex, legs[0], legs[1], legs[2]).Legs.Select(leg => leg.Vertical)];
        }

        var apart = Math.Sqrt(Math.Pow(legs[1].X - legs[0].X, 2) + Math.Pow(legs[1].Y - legs[0].Y, 2));
        var first = Along(legs[0], legs[1] - legs[0], apart);
        if (apart <= 0 || legs[0].Z <= 0 || legs[1].Z <= 0 || (legs[0].Z * (apart - first)) + (legs[1].Z * first) <= 0)
        {
            return [];
        }

        var two = TwoLegBridle.FromApex(1, legs[0].Z, first, legs[1].Z, apart - first);
        return [two.First.Vertical, two.Second.Vertical];
    }

    private static double Along(RiggingPoint leg, RiggingPoint line, double apart) => apart > 0 ? -((leg.X * line.X) + (leg.Y * line.Y)) / apart : 0;

    private static Figure<Angle> Widest(Bridle bridle, List<RiggingPoint> legs)
    {
        var widest = (from one in legs from other in legs select Math.Acos(Math.Clamp(one.Dot(other) / (one.Length * other.Length), -1, 1))).Max();
        return new Figure<Angle>(Angle.FromDegrees(widest * 180 / Math.PI), Doubts.None, new Reason.Fixed(bridle.At));
    }

    // By its legs as made; else as far under its lowest point as was said, under the pick.
    private RiggingPoint? ApexOf(Bridle bridle, IReadOnlyList<RiggingPoint> anchors, IReadOnlyList<PickPlan> picks)
    {
        if (bridle.Legs.Count == anchors.Count)
        {
            return anchors.Count == 3 ? ThreeLegBridle.ApexOf(anchors, [.. bridle.Legs.Select(leg => leg.Meters)]) : OfTwo(anchors, bridle.Legs);
        }

        return bridle.Drop is { } given && given.Is(out var drop) && picks.Select(pick => pick.Spot).FirstOrDefault(spot => spot is not null) is { } under
            ? new RiggingPoint(under.X, under.Y, anchors.Min(anchor => anchor.Z) - drop.Meters)
            : null;
    }

    private static RiggingPoint? OfTwo(IReadOnlyList<RiggingPoint> anchors, IReadOnlyList<Length> legs)
    {
        var line = anchors[1] - anchors[0];
        var apart = Math.Sqrt((line.X * line.X) + (line.Y * line.Y));
        return apart > 0 && TwoLegBridle.FromLengths(1, apart, line.Z, legs[0].Meters, legs[1].Meters) is { } two
            ? new RiggingPoint(anchors[0].X + (line.X / apart * two.Apex.Away), anchors[0].Y + (line.Y / apart * two.Apex.Away), anchors[0].Z - two.Apex.Drop)
            : null;
    }

    private RiggingPoint? AnchorOf(string name) => brief.Venue.RoofPoints.Is(out var points)
        && points.FirstOrDefault(point => string.Equals(point.Name, name, StringComparison.OrdinalIgnoreCase)) is { } found
        && ground.Find(found.Place) is { } spot && found.Height.Is(out var height)
        ? new RiggingPoint(spot.X, spot.Y, height.Meters)
        : null;

    internal static Figure<Mass> Total(string name, IEnumerable<Figure<Mass>> parts) =>
        Sum.Of(name, "F = Σ Fᵢ", Publication.Arithmetic).PutAll("Fᵢ", parts).Gives(terms => Mass.FromKilograms(terms.Values.Sum(one => one.Kilograms)));
}
