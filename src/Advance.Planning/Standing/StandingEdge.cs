using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>One edge of the feet that something may tip over, and what holds it there.</summary>
/// <param name="Name">Which: <c>rear edge</c>.</param>
/// <param name="X">The way out over it, towards stage left; with <see cref="Y"/> of length 1.</param>
/// <param name="Y">The way out over it, towards the rear.</param>
/// <param name="Inside">How far the centre of gravity is inside it; negative outside.</param>
/// <param name="Angle">How far it must lean to tip over it.</param>
/// <param name="Slope">How much the ground falls towards it.</param>
/// <param name="Arm">Of the weight about it.</param>
/// <param name="Grip">The share of the weight that friction leaves to hold it that way.</param>
public sealed record StandingEdge(
    string Name, double X, double Y, Figure<Length> Inside, Figure<Angle> Angle, Figure<Angle> Slope, Figure<Length> Arm, Figure<double> Grip)
{
    /// <summary>The way out over it, in words: <c>to the rear</c>, <c>to SL</c>.</summary>
    public string Towards => Name[..2] is "SL" or "SR" ? $"to {Name[..2]}" : $"to the {Name.Split(' ')[0]}";

    /// <summary>Where the wind comes from that tips it most; empty where people push.</summary>
    public string From { get; init; } = "";

    /// <summary>What tips it, in the stated wind or by people; null where nothing is stated.</summary>
    public Figure<Torque>? Moment { get; init; }

    /// <summary>What pushes it along; null where nothing is stated.</summary>
    public Figure<Force>? Push { get; init; }

    /// <summary>What holds over what tips; null where nothing is stated.</summary>
    public Figure<double>? Tipping { get; init; }

    /// <summary>What holds over what pushes; null where nothing is stated.</summary>
    public Figure<double>? Sliding { get; init; }

    /// <summary>The gust at which it tips, with the company's ratio to spare; null indoors.</summary>
    public Figure<Speed>? TippingGust { get; init; }

    /// <summary>The gust at which it slides, with the company's ratio to spare; null indoors.</summary>
    public Figure<Speed>? SlidingGust { get; init; }

    /// <summary>Fixed weight on the middle of the base that is missing against tipping; null where nothing is stated.</summary>
    public Figure<Mass>? AgainstTipping { get; init; }

    /// <summary>Fixed weight that is missing against sliding; null where nothing is stated.</summary>
    public Figure<Mass>? AgainstSliding { get; init; }

    /// <summary>What a joint here would have to hold; null where nothing is stated.</summary>
    public Figure<Torque>? ForJoint { get; init; }
}
