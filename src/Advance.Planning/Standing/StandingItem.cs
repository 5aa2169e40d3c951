using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using UnitsNet;

namespace Advance.Planning;

/// <summary>A stack, a lighting stand or another thing that stands.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="Written">The address that both of a mirrored pair share.</param>
/// <param name="Name">Its name on paper.</param>
/// <param name="WrittenName">The name that both of a mirrored pair share.</param>
/// <param name="At">Where it was written.</param>
/// <param name="On">What it stands on.</param>
/// <param name="Parts">What it is made of.</param>
/// <param name="Whole">All of it on its feet.</param>
/// <param name="Interfaces">What stands on each of its boxes.</param>
public sealed record StandingItem(
    Address Address, Address Written, string Name, string WrittenName, Mark At, Footing On, IReadOnlyList<StandingPart> Parts, StandingBody Whole, IReadOnlyList<StandingBody> Interfaces)
{
    /// <summary>How high it ends above what it stands on.</summary>
    public required Figure<Length> Height { get; init; }

    /// <summary>Corners of the polygon of its feet, in metres from the middle of its base; empty where nobody knows.</summary>
    public IReadOnlyList<(double X, double Y)> Feet { get; init; } = [];

    /// <summary>The gust at its top; unknown where nobody says.</summary>
    public required Figure<Speed> Gust { get; init; }

    /// <summary>The gust that it stands with the company's ratio, by the worst edge, mode and loose interface; null indoors.</summary>
    public Figure<Speed>? Limit { get; init; }

    /// <summary>What that limit comes from, in words: <c>tips over its rear edge</c>.</summary>
    public string LimitFrom { get; init; } = "";

    /// <summary>Whether that limit rests on a friction of the ground or the deck that nobody knows.</summary>
    public bool IsLimitByAssumedFriction { get; init; }

    /// <summary>Make ready; null indoors.</summary>
    public Figure<Speed>? Prepare { get; init; }

    /// <summary>Lower or clear; null indoors.</summary>
    public Figure<Speed>? Act { get; init; }

    /// <summary>The mean of a forecast in which that limit is to be reckoned with; null indoors.</summary>
    public Figure<Speed>? Forecast { get; init; }

    /// <summary>Fixed weight on the middle of the base that is missing in the stated wind; null where nobody states it.</summary>
    public Figure<Mass>? Ballast { get; init; }

    /// <summary>What twists its base in the stated wind, as wind on a sheet pushes off its middle; null where no sheet is in it, and indoors.</summary>
    public Figure<Torque>? Twist { get; init; }

    /// <summary>How much of that twist and of the push with it friction holds; null where there is none.</summary>
    public Figure<double>? Turning { get; init; }

    /// <summary>What it does to the ground or the deck; null where nobody knows its feet.</summary>
    public GroundLoad? Ground { get; init; }

    /// <summary>Its ballast as written.</summary>
    public IReadOnlyList<BallastRow> Ballasted { get; init; } = [];

    /// <summary>What is assumed of it, in words.</summary>
    public IReadOnlyList<string> Assumed { get; init; } = [];

    /// <summary>Whether it stands on castors.</summary>
    public bool IsOnCastors { get; init; }

    /// <summary>The whole and every loose part of it: what may tip or slide by itself.</summary>
    public IEnumerable<StandingBody> Loose => Interfaces.Where(body => body.IsLoose).Prepend(Whole);

    /// <summary>The whole and every part, joined or not.</summary>
    public IEnumerable<StandingBody> Bodies => Interfaces.Prepend(Whole);

    /// <summary>All open questions about it.</summary>
    public Doubts RestsOn => Whole.Edges.Aggregate(Whole.Holds.RestsOn.With(Whole.CentreHeight.RestsOn), (sum, edge) => sum.With(edge.Inside.RestsOn).With(edge.Slope.RestsOn).With(edge.Moment?.RestsOn ?? Doubts.None));

    /// <summary>Its numbers, each under its address.</summary>
    public IEnumerable<Stated> Figures =>
    [
        .. Whole.Figures,
        .. Interfaces.Where(body => body.IsLoose).SelectMany(body => body.Ratios),
        .. StateOf("limit", "gust that it stands", Limit),
        .. StateOf("prepare", "gust to make ready at", Prepare),
        .. StateOf("act", "gust to act at", Act),
        .. StateOf("forecast", "mean of a forecast for that limit", Forecast),
        .. StateOf("ballast", "ballast missing in the stated wind", Ballast),
        .. StateOf("twist", "wind twists its base with", Twist),
        .. StateOf("turning", "ratio against being turned on its feet", Turning),
        .. Ground?.Figures(Address, Name) ?? [],
    ];

    private IEnumerable<Stated> StateOf<T>(string part, string what, Figure<T>? figure)
        where T : struct, IComparable<T> => figure is null ? [] : [Stated.Of(Address / part, $"{Name}, {what}", figure)];
}
