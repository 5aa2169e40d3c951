using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Venues;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>
/// Adds up what pulls a point of the roof sideways: chains that lean and legs of bridles each their way, and wind and lines whichever way is worst.
/// A bridle passes what pushes its hook on to its points as it shares what hangs on it.
/// </summary>
internal sealed class PointSideways
{
    private static readonly Figure<Mass> None = new(Mass.Zero, Doubts.None, Reason.Derived.It);

    private readonly RoofPoint point;
    private readonly Angle straight;

    /// <param name="point">Which.</param>
    /// <param name="straight">How far off plumb counts as straight where the venue says nothing.</param>
    /// <param name="picks">Those that hang on it.</param>
    /// <param name="legs">Those of bridles that go to it, each null where nobody knows how it lies.</param>
    public PointSideways(RoofPoint point, Angle straight, IReadOnlyList<PickPlan> picks, IReadOnlyList<(BridlePlan Bridle, BridleLegPlan? Leg)> legs)
    {
        (this.point, this.straight) = (point, straight);
        List<SidewaysPull> pulls = [.. picks.SelectMany(pick => pick.Pulls), .. legs.Select(one => one.Leg is { } leg ? new SidewaysPull(leg.Sideways, leg.TowardsX, leg.TowardsY) : new SidewaysPull(None with { Value = null }, 0, 0))];
        Pull = pulls.TrueForAll(one => one.Pull.Value is { Kilograms: 0 }) ? None with { RestsOn = pulls.Aggregate(Doubts.None, (sum, one) => sum.With(one.Pull.RestsOn)) } : TotalOf(pulls);
        Bearing = Pull.Value is { Kilograms: > 1e-9 } ? BearingOf(pulls) : null;
        List<Figure<Mass>> pushes =
        [
            .. picks.Select(pick => pick.Pushed).OfType<Figure<Mass>>(),
            .. from one in legs
               from pick in one.Bridle.On
               where pick.Pushed is not null && one.Leg is not null
               select Sum.Of($"leg to {point.Name}, pushed sideways", "H = F · c", Statics.Bridles).Put("F", pick.Pushed!).Put("c", one.Leg.Share).Gives((force, share) => force * share),
        ];
        Pushed = pushes.Count == 0 ? null : BridleStatics.Total($"{point.Name}, pushed sideways, whichever way", pushes);
        Most = AndPushed(point.Bearing is null ? Pull : PartOf("along the line that it may be pulled along", "H = |Σ Hᵢ · cos(βᵢ − β)|", pulls, Math.Cos), "sideways at most");
        Across = point.Bearing is null ? null : AndPushed(PartOf("across that line", "H = |Σ Hᵢ · sin(βᵢ − β)|", pulls, Math.Sin), "across that line at most");
    }

    /// <summary>All that pulls, each its way.</summary>
    public Figure<Mass> Pull { get; }

    /// <summary>Which way, in degrees clockwise from upstage; null where nothing pulls.</summary>
    public double? Bearing { get; }

    /// <summary>What pushes whichever way; null where nothing does.</summary>
    public Figure<Mass>? Pushed { get; }

    /// <summary>Both the same way; where it may be pulled along one line alone, along that.</summary>
    public Figure<Mass> Most { get; }

    /// <summary>Both across the line that it may be pulled along; null where it may be pulled every way.</summary>
    public Figure<Mass>? Across { get; }

    /// <summary>What it may be pulled sideways under what hangs on it.</summary>
    public Figure<Mass> LimitUnder(Figure<Mass> hangs) => point.Sideways is { } said ? Figure.From(said)
        : Leaning($"{point.Name}, sideways allowed", hangs, point.OffPlumb is { } leans ? Figure.From(leans) : Figure.Policy("off-plumb", straight));

    /// <summary>And across the line that it may be pulled along: no more than what counts as straight.</summary>
    public Figure<Mass> AcrossLimitUnder(Figure<Mass> hangs) => Leaning($"{point.Name}, allowed across that line", hangs, Figure.Policy("off-plumb", straight));

    private static Figure<Mass> Leaning(string name, Figure<Mass> hangs, Figure<Angle> off) =>
        Sum.Of(name, "H = V · tan(θ)", Statics.Equilibrium).Put("V", hangs).Put("θ", off).Gives((down, angle) => down * Math.Tan(angle.Radians));

    private Figure<Mass> AndPushed(Figure<Mass> pulled, string how) => Pushed is null ? pulled
        : Sum.Of($"{point.Name}, {how}", "H = H₀ + F", Publication.Arithmetic).Put("H₀", pulled).Put("F", Pushed).Gives((always, push) => always + push);

    private Figure<Mass> PartOf(string how, string formula, List<SidewaysPull> pulls, Func<double, double> part) =>
        Sum.Of($"{point.Name}, {how}", formula, Statics.Equilibrium)
            .PutAll("Hᵢ", pulls.Select(one => one.Pull))
            .PutAll("βᵢ", pulls.Select(one => new Figure<Angle>(Angle.FromDegrees(SidewaysPull.Bearing(one.TowardsX, one.TowardsY)), one.Pull.RestsOn, Reason.Derived.It)))
            .Put("β", Figure.From(point.Bearing!.Value))
            .Gives((forces, ways, line) => Mass.FromKilograms(Math.Abs(forces.Values.Zip(ways.Values, (force, way) => force.Kilograms * part(way.Radians - line.Radians)).Sum())));

    private Figure<Mass> TotalOf(List<SidewaysPull> pulls) =>
        Sum.Of($"{point.Name}, sideways", "H = √((Σ Hᵢ · xᵢ)² + (Σ Hᵢ · yᵢ)²)", Statics.Equilibrium)
            .PutAll("Hᵢ", pulls.Select(one => one.Pull))
            .PutAll("xᵢ", pulls.Select(one => new Figure<double>(one.TowardsX, one.Pull.RestsOn, Reason.Derived.It)))
            .PutAll("yᵢ", pulls.Select(one => new Figure<double>(one.TowardsY, one.Pull.RestsOn, Reason.Derived.It)))
            .Gives((forces, lefts, ups) => Mass.FromKilograms(Math.Sqrt(Math.Pow(Turned(forces, lefts), 2) + Math.Pow(Turned(forces, ups), 2))));

    private static double BearingOf(List<SidewaysPull> pulls) =>
        SidewaysPull.Bearing(pulls.Sum(one => one.TowardsX * one.Pull.Value!.Value.Kilograms), pulls.Sum(one => one.TowardsY * one.Pull.Value!.Value.Kilograms));

    private static double Turned(Terms<Mass> forces, Terms<double> parts) => forces.Values.Zip(parts.Values, (force, part) => force.Kilograms * part).Sum();
}
