using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What stands as one on one base: a whole stack, or what stands on one of its boxes.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="Name">Its name on paper.</param>
/// <param name="Holds">Its weight, as far as it may be counted on.</param>
/// <param name="CentreHeight">Of its centre of gravity above its base.</param>
/// <param name="Edges">Each edge of its feet; empty where nobody knows where they are.</param>
public sealed record StandingBody(Address Address, string Name, Figure<Mass> Holds, Figure<Length> CentreHeight, IReadOnlyList<StandingEdge> Edges)
{
    /// <summary>Of its centre of gravity from the middle of its base, towards stage left; null where it was not worked out.</summary>
    public Figure<Length>? CentreAcross { get; init; }

    /// <summary>The same towards its rear.</summary>
    public Figure<Length>? CentreBack { get; init; }

    /// <summary>The joint that holds it; empty for one that just stands there.</summary>
    public string Joint { get; init; } = "";

    /// <summary>The moment which that joint carries; null where nobody says.</summary>
    public Figure<Torque>? JointStrength { get; init; }

    /// <summary>Under its feet, wet in the open.</summary>
    public required Figure<double> Friction { get; init; }

    /// <summary>Whether nobody knows its friction, so that the company's figure was taken.</summary>
    public bool IsFrictionAssumed { get; init; }

    /// <summary>Whether it stands by its own weight alone.</summary>
    public bool IsLoose => Joint.Length == 0;

    /// <summary>The edge with the least ratio against tipping; null where none is known.</summary>
    public StandingEdge? WorstTipping => Edges.Where(edge => edge.Tipping?.Value is not null).MinBy(edge => edge.Tipping!.Value!.Value);

    /// <summary>The edge with the least ratio against sliding; null where none is known.</summary>
    public StandingEdge? WorstSliding => Edges.Where(edge => edge.Sliding?.Value is not null).MinBy(edge => edge.Sliding!.Value!.Value);

    /// <summary>Whether its weight is over its feet; null where nobody knows.</summary>
    public bool? StandsByItself => Edges.Count == 0 || Edges.Any(edge => edge.Arm.Value is null) ? null : Edges.All(edge => edge.Arm.Value!.Value.Meters > 0);

    /// <summary>What is stated of all of it; <c>what of, what, which</c>.</summary>
    public IEnumerable<Stated> Figures =>
    [
        Stated.Of(Address / "holds", $"{Name}, weight that holds", Holds),
        Stated.Of(Address / "centre-height", $"{Name}, height of its centre of gravity", CentreHeight),
        .. Edges.SelectMany(edge => Of(edge)),
        .. Ratios,
    ];

    /// <summary>What is stated of what stands on one of its boxes: the ratios alone, all else is behind them.</summary>
    public IEnumerable<Stated> Ratios => Edges.SelectMany(edge => new[]
    {
        StateOf(Address / edge.Name / "tipping", $"{Name}, ratio against tipping, {edge.Name}", edge.Tipping),
        StateOf(Address / edge.Name / "sliding", $"{Name}, ratio against sliding, {edge.Name}", edge.Sliding),
        StateOf(Address / edge.Name / "tipping-gust", $"{Name}, gust at which it tips, {edge.Name}", edge.TippingGust),
        StateOf(Address / edge.Name / "sliding-gust", $"{Name}, gust at which it slides, {edge.Name}", edge.SlidingGust),
    }).OfType<Stated>();

    private Stated[] Of(StandingEdge edge) =>
    [
        Stated.Of(Address / edge.Name / "inside", $"{Name}, centre of gravity inside an edge, {edge.Name}", edge.Inside),
        Stated.Of(Address / edge.Name / "tip-angle", $"{Name}, angle at which it tips, {edge.Name}", edge.Angle),
    ];

    private static Stated? StateOf<T>(Address address, string what, Figure<T>? figure)
        where T : struct, IComparable<T> => figure is null ? null : Stated.Of(address, what, figure);
}
