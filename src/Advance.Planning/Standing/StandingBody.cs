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
    /// <summary>The joint that holds it; empty for one that just stands there.</summary>
    public string Joint { get; init; } = "";

    /// <summary>The moment which that joint carries; null where nobody says.</summary>
    public Figure<Torque>? JointStrength { get; init; }

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

    /// <summary>Its numbers, each under its address; <c>what of, what, which</c>.</summary>
    public IEnumerable<Stated> Figures
    {
        get
        {
            yield return Stated.Of(Address / "holds", $"{Name}, weight that holds", Holds);
            yield return Stated.Of(Address / "centre-height", $"{Name}, height of its centre of gravity", CentreHeight);
            foreach (var edge in Edges)
            {
                foreach (var stated in Of(edge))
                {
                    yield return stated;
                }
            }
        }
    }

    private IEnumerable<Stated> Of(StandingEdge edge)
    {
        var at = Address / edge.Name;
        yield return Stated.Of(at / "inside", $"{Name}, centre of gravity inside an edge, {edge.Name}", edge.Inside);
        yield return Stated.Of(at / "tip-angle", $"{Name}, angle at which it tips, {edge.Name}", edge.Angle);
        yield return Stated.Of(at / "arm", $"{Name}, arm of its weight, {edge.Name}", edge.Arm);
        foreach (var stated in new[]
        {
            StateOf(at / "moment", $"{Name}, what tips it, {edge.Name}", edge.Moment),
            StateOf(at / "push", $"{Name}, what pushes it, {edge.Name}", edge.Push),
            StateOf(at / "tipping", $"{Name}, ratio against tipping, {edge.Name}", edge.Tipping),
            StateOf(at / "sliding", $"{Name}, ratio against sliding, {edge.Name}", edge.Sliding),
            StateOf(at / "tipping-gust", $"{Name}, gust at which it tips, {edge.Name}", edge.TippingGust),
            StateOf(at / "sliding-gust", $"{Name}, gust at which it slides, {edge.Name}", edge.SlidingGust),
            StateOf(at / "against-tipping", $"{Name}, ballast against tipping, {edge.Name}", edge.AgainstTipping),
            StateOf(at / "against-sliding", $"{Name}, ballast against sliding, {edge.Name}", edge.AgainstSliding),
        }.OfType<Stated>())
        {
            yield return stated;
        }
    }

    private static Stated? StateOf<T>(Address address, string what, Figure<T>? figure)
        where T : struct, IComparable<T> => figure is null ? null : Stated.Of(address, what, figure);
}
