using UnitsNet;

namespace Advance.Domain.Companies;

/// <summary>How safely things stand. All of it common practice, without a source.</summary>
public sealed record StandingPolicies
{
    /// <summary>The settings shipped.</summary>
    public static readonly StandingPolicies Default = new();

    /// <summary><c>ratio</c>: what holds over what tips or pushes, on weighed weight; over 0.</summary>
    public double Ratio { get; init; } = 1.5;

    /// <summary><c>catalogue-share</c>: of a weight that nobody weighed, so much counts as holding, in per cent.</summary>
    public double CatalogueShare { get; init; } = 90;

    /// <summary><c>friction</c>: where nobody says; over 0.</summary>
    public double Friction { get; init; } = 0.2;

    /// <summary><c>prepare</c>: at this share of the gust that a thing stands, in per cent.</summary>
    public double Prepare { get; init; } = 60;

    /// <summary><c>act</c>: at this share of the gust that a thing stands, in per cent.</summary>
    public double Act { get; init; } = 80;

    /// <summary><c>lower-within</c>: what comes down in wind takes no longer.</summary>
    public Duration LowerWithin { get; init; } = Duration.FromMinutes(10);

    /// <summary><c>from-height</c>: lower things are not judged.</summary>
    public Length FromHeight { get; init; } = Length.FromMeters(0.5);

    /// <summary><c>cloth-swing</c>: a cloth that hangs in the open comes down before wind swings it further out.</summary>
    public Angle ClothSwing { get; init; } = Angle.FromDegrees(15);

    /// <summary><c>tip-angle</c>: what tips earlier does not stand.</summary>
    public Angle TipAngle { get; init; } = Angle.FromDegrees(10);

    /// <summary><c>push</c>: of people and barrows indoors, in per cent of the weight.</summary>
    public double Push { get; init; } = 13;

    /// <summary><c>push-most</c>: that push is no larger.</summary>
    public Force PushMost { get; init; } = Force.FromNewtons(250);

    /// <summary><c>push-height</c>: it pushes at the top, but no higher.</summary>
    public Length PushHeight { get; init; } = Length.FromMeters(1.5);
}
