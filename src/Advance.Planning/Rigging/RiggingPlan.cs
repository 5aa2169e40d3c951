using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Venues;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What hangs, and what it asks of hoists, points and the roof.</summary>
/// <param name="Trusses">In the order written.</param>
/// <param name="Bridles">In the order written.</param>
/// <param name="Points">The venue's points that something hangs on, in its order.</param>
/// <param name="Beams">The venue's beams that such a point is on.</param>
/// <param name="Roof">On the whole roof, at rest; null where nothing hangs.</param>
public sealed record RiggingPlan(
    IReadOnlyList<TrussPlan> Trusses, IReadOnlyList<BridlePlan> Bridles, IReadOnlyList<PointPlan> Points, IReadOnlyList<BeamPlan> Beams, Figure<Mass>? Roof)
{
    /// <summary>The venue's other points, that nothing hangs on, in its order.</summary>
    public IReadOnlyList<(RoofPoint Point, Spot? Spot)> Unused { get; init; } = [];

    /// <summary>The venue's bays that something hangs in.</summary>
    public IReadOnlyList<BayPlan> Bays { get; init; } = [];

    /// <summary>Hangs of loudspeakers, each on its side.</summary>
    public IReadOnlyList<HangPlan> Hangs { get; init; } = [];

    /// <summary>Every pick of every truss and every hang.</summary>
    public IReadOnlyList<PickPlan> Picks => field ??= [.. Trusses.SelectMany(truss => truss.Picks), .. Hangs.SelectMany(hang => hang.Picks).Select(pick => pick.Pick)];

    /// <summary>The venue's point that a pick hangs on; null for one on a bridle, and where nobody knows it.</summary>
    public RoofPoint? PointOf(PickPlan pick) => Points.FirstOrDefault(point => point.Hangs.Contains(pick.Name))?.Point;

    /// <summary>What a pick hangs on, and how high; null where nobody knows.</summary>
    public HangsOn? Above(PickPlan pick)
    {
        if (PointOf(pick) is { } point)
        {
            return point.Height.Is(out var height) ? new HangsOn(point.Name, height, Doubts.Of(point.Height.Doubt)) : null;
        }

        return Bridles.FirstOrDefault(bridle => bridle.On.Contains(pick)) is { Placed.Apex: { } apex } on ? new HangsOn($"the hook of {on.Name}", Length.FromMeters(apex.Z), on.Placed.RestsOn) : null;
    }

    /// <summary>Whether it is known what may hang on a pick's hoist and on its point, or on those of its bridle: if not, nothing tells how uneven it may be.</summary>
    public bool IsBounded(PickPlan pick) =>
        (pick.Placed.Hoist is null || pick.Rating.Value is not null)
        && (Bridles.FirstOrDefault(bridle => bridle.On.Contains(pick)) is { } bridle
            ? bridle.Legs.Count > 0 && bridle.Legs.All(leg => Points.Any(point => point.Limit.Value is not null && string.Equals(point.Point.Name, leg.Point, StringComparison.OrdinalIgnoreCase)))
            : Points.Any(point => point.Limit.Value is not null && point.Hangs.Contains(pick.Name, StringComparer.Ordinal)));

    /// <summary>Their numbers.</summary>
    public IReadOnlyList<Stated> Figures =>
    [
        .. Trusses.SelectMany(truss => truss.Figures),
        .. Hangs.SelectMany(hang => hang.Figures),
        .. Bridles.SelectMany(bridle => bridle.Figures),
        .. Points.SelectMany(point => point.Figures),
        .. Beams.SelectMany(beam => beam.Figures),
        .. Bays.SelectMany(bay => bay.Figures),
        .. Roof is null ? [] : new[] { Stated.Of(Address.Of("rigging") / "roof", "all points of the roof, at rest", Roof) },
    ];
}
