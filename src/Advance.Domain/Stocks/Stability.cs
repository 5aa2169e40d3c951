using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Stocks;

/// <summary>How a kind stands and what the wind does to it.</summary>
/// <param name="Feet">Where its feet are; empty means at the corners of its size.</param>
/// <param name="Foot">What it stands on.</param>
/// <param name="Shape">What it is to the wind.</param>
public sealed record Stability(IReadOnlyList<Foot> Feet, FootKind Foot, WindShape Shape)
{
    /// <summary>How high its centre of gravity is above its underside; null means half its height.</summary>
    public Given<Length>? CentreHeight { get; init; }

    /// <summary>How far its centre of gravity is from its middle, towards stage left as it faces the audience; null means not at all.</summary>
    public Given<Length>? CentreAcross { get; init; }

    /// <summary>How far its centre of gravity is from its middle, towards its rear; null means not at all.</summary>
    public Given<Length>? CentreBack { get; init; }

    /// <summary>What the wind sees from the front; null means width times height.</summary>
    public Given<Area>? FrontArea { get; init; }

    /// <summary>What the wind sees from the side; null means depth times height.</summary>
    public Given<Area>? SideArea { get; init; }

    /// <summary>What the wind sees from behind; null means as from the front.</summary>
    public Given<Area>? RearArea { get; init; }

    /// <summary>Its force coefficient; null means by its shape.</summary>
    public Given<double>? ForceCoefficient { get; init; }

    /// <summary>Where that coefficient stands; empty where not said.</summary>
    public string ForceCoefficientFrom { get; init; } = "";

    /// <summary>What one foot covers; null means that it stands on its whole underside.</summary>
    public Given<Area>? FootArea { get; init; }

    /// <summary>Of a joint, the moment that it carries; null where nobody says.</summary>
    public Given<Torque>? JointStrength { get; init; }
}
