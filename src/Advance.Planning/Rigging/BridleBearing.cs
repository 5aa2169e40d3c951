using Advance.Domain;
using Advance.Domain.Venues;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What a bridle bears at its apex, and how far it gives, before anybody knows what hangs on it.</summary>
internal sealed class BridleBearing(Brief brief, PlacedBridle bridle)
{
    /// <summary>
    /// How far its apex gives straight down for each newton, m: by the work of all legs, the sum of <c>t² f</c>, t what a leg pulls for each newton at the apex,
    /// f by how much it gives; with the points, that give straight down alone. 0 where nobody knows of any part that gives.
    /// </summary>
    public double Flexibility => Legs.Sum(leg => (leg.Pull * leg.Pull * leg.Leg.Gear.Sum(PickParts.FlexibilityOf)) + (leg.Share * leg.Share * PickParts.FlexibilityOf(leg.Point)));

    private IEnumerable<(PlacedLeg Leg, double Share, double Pull, RoofPoint? Point)> Legs => bridle.Shares.Select((share, index) =>
        (bridle.Legs[index], share, share * BridleGeometry.PullPerDown(bridle.Ways[index]), brief.Venue.PointNamed(bridle.Legs[index].Point)));

    /// <summary>The most that may hang on its apex at rest, kg, so that every point and every part of a leg bears it; null where one of them is unknown.</summary>
    /// <param name="dynamic">What starting and stopping adds, as a factor.</param>
    public double? Most(double dynamic)
    {
        var each = Legs.Where(leg => leg.Share > 0).Select(leg => MostOf(leg, dynamic)).ToList();
        return each.Count == 0 || each.Contains(null) ? null : each.Min();
    }

    /// <summary>The most that may hang on a point at rest, kg; null where nobody knows.</summary>
    /// <param name="point">The venue's.</param>
    /// <param name="dynamic">What starting and stopping adds, as a factor.</param>
    public static double? Most(RoofPoint? point, double dynamic) => point is null || !point.Limit.Is(out var limit) ? null : point.IsForMoving ? limit.Kilograms / dynamic : limit.Kilograms;

    private double? MostOf((PlacedLeg Leg, double Share, double Pull, RoofPoint? Point) leg, double dynamic)
    {
        var own = StackFigures.Weight(leg.Leg.Gear, brief.Company.Policies.WeightMargin).Value?.Kilograms;
        var parts = new PartUses(brief).OfLeg(leg.Leg.Gear, bridle.Bridle.Hitch, new(Mass.Zero, Domain.Facts.Doubts.None, Domain.Figures.Reason.Derived.It), 90 - FromLevel(leg)).Select(part => part.May.Value?.Kilograms / (dynamic * leg.Pull));
        return parts.Append((Most(leg.Point, dynamic) - own) / leg.Share).Aggregate((double?)double.MaxValue, (least, one) => least is { } so && one is { } other ? Math.Min(so, other) : null);
    }

    private static double FromLevel((PlacedLeg Leg, double Share, double Pull, RoofPoint? Point) leg) => Math.Asin(Math.Clamp(leg.Share / leg.Pull, -1, 1)) * 180 / Math.PI;
}
