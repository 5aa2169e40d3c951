using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Works out bridles: what each leg pulls, which way, and how much of its parts is used.</summary>
internal sealed class BridleStatics(Brief brief)
{
    private static readonly Figure<Angle> NotKnown = new(null, Doubts.None, Reason.Derived.It);

    /// <summary>One bridle with all picks that hang on it.</summary>
    public BridlePlan Of(PlacedBridle placed, IReadOnlyList<PickPlan> picks)
    {
        var rest = Total($"{placed.Bridle.Name}, on its apex, at rest", picks.Select(pick => pick.PointAtRest));
        var moving = Total($"{placed.Bridle.Name}, on its apex, moving", picks.Select(pick => pick.PointMoving));
        var shares = placed.Shares;
        return shares.Count == 0 ? new BridlePlan(placed, rest, moving, [], NotKnown) { On = picks }
            : new BridlePlan(placed, rest, moving, [.. shares.Select((share, index) => LegOf(placed, index, share, rest, moving))], new Figure<Angle>(Angle.FromDegrees(BridleGeometry.Widest(placed.Ways)), placed.RestsOn, new Reason.Fixed(placed.Bridle.At))) { On = picks };
    }

    private BridleLegPlan LegOf(PlacedBridle placed, int index, double share, Figure<Mass> rest, Figure<Mass> moving)
    {
        var (leg, way) = (placed.Legs[index], placed.Ways[index]);
        var level = Math.Sqrt((way.X * way.X) + (way.Y * way.Y));
        var name = $"{placed.Bridle.Name}, leg to {leg.Point}";
        var part = new Figure<double>(share, placed.RestsOn, Reason.Derived.It);
        var angle = Angle.FromDegrees(Math.Atan2(way.Z, level) * 180 / Math.PI);
        var from = new Figure<Angle>(angle, placed.RestsOn, Reason.Derived.It);
        var down = Share($"{name}, straight down, at rest", rest, part);
        var pull = Sum.Of($"{name}, pull, moving", "T = V / sin α", Statics.Bridles).Put("V", Share($"{name}, straight down, moving", moving, part)).Put("α", from).Gives((vertical, at) => vertical / Math.Sin(at.Radians));
        return new BridleLegPlan(
            leg,
            way.Length,
            angle.Degrees,
            level > 0 ? -way.X / level : 0,
            level > 0 ? -way.Y / level : 0,
            pull,
            down,
            Sum.Of($"{name}, sideways, at rest", "H = V / tan α", Statics.Bridles).Put("V", down).Put("α", from).Gives((vertical, at) => vertical / Math.Tan(at.Radians)),
            share < 0)
        {
            Share = part,
            Own = StackFigures.Weight(leg.Gear, brief.Company.Policies.WeightMargin, $"{name}, itself"),
            Parts = new PartUses(brief).OfLeg(leg.Gear, placed.Bridle.Hitch, pull, 90 - angle.Degrees),
        };
    }

    // The share of what hangs that goes straight down on the point of a leg; those of all legs are 1 together.
    private static Figure<Mass> Share(string name, Figure<Mass> whole, Figure<double> part) =>
        Sum.Of(name, "V = F · c", Statics.Bridles).Put("F", whole).Put("c", part).Gives((all, share) => all * share);

    internal static Figure<Mass> Total(string name, IEnumerable<Figure<Mass>> parts) =>
        Sum.Of(name, "F = Σ Fᵢ", Publication.Arithmetic).PutAll("Fᵢ", parts).Gives(terms => Mass.FromKilograms(terms.Values.Sum(one => one.Kilograms)));
}
