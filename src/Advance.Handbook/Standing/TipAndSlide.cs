using UnitsNet;

namespace Advance.Handbook;

/// <summary>Whether a body that stands on feet tips over an edge of them, or slides. Source: <see cref="RigidBodies.Balance"/>.</summary>
public static class TipAndSlide
{
    /// <summary>Standard gravity, m/s².</summary>
    public const double Gravity = 9.80665;

    /// <summary>How far it must lean to tip: <c>θ = atan(d / z)</c>.</summary>
    /// <param name="inside">Of the centre of gravity inside the edge, m; negative outside.</param>
    /// <param name="height">Of the centre of gravity, m, over 0.</param>
    public static Angle TipAngle(Length inside, Length height) => Angle.FromRadians(Math.Atan(inside.Meters / height.Meters));

    /// <summary>The arm of its weight about the edge, on ground that falls towards it: <c>a = d · cos(s) - z · sin(s)</c>.</summary>
    /// <param name="inside">Of the centre of gravity inside the edge, m; negative outside.</param>
    /// <param name="height">Of the centre of gravity, m.</param>
    /// <param name="slope">How much the ground falls towards the edge.</param>
    public static Length Arm(Length inside, Length height, Angle slope) =>
        Length.FromMeters((inside.Meters * Math.Cos(slope.Radians)) - (height.Meters * Math.Sin(slope.Radians)));

    /// <summary>What holds it over what tips it: <c>r = g · m · a / M</c>.</summary>
    /// <param name="mass">kg.</param>
    /// <param name="arm">m.</param>
    /// <param name="moment">That tips it, N·m, over 0.</param>
    public static double Tipping(Mass mass, Length arm, Torque moment) => Gravity * mass.Kilograms * arm.Meters / moment.NewtonMeters;

    /// <summary>The share of its weight that friction leaves to hold it on a slope: <c>h = μ · cos(s) - sin(s)</c>.</summary>
    /// <param name="friction">Of the wet pair, over 0.</param>
    /// <param name="slope">How much the ground falls to where it slides.</param>
    public static double Grip(double friction, Angle slope) => (friction * Math.Cos(slope.Radians)) - Math.Sin(slope.Radians);

    /// <summary>What holds it over what pushes it: <c>r = g · m · h / F</c>.</summary>
    /// <param name="mass">kg.</param>
    /// <param name="grip">See <see cref="Grip"/>.</param>
    /// <param name="push">N, over 0.</param>
    public static double Sliding(Mass mass, double grip, Force push) => Gravity * mass.Kilograms * grip / push.Newtons;

    /// <summary>The gust at which it tips with a ratio to spare: <c>v = √(2 · g · m · a / (ρ · γ · S))</c>; 0 where it tips by itself.</summary>
    /// <param name="mass">kg.</param>
    /// <param name="arm">m.</param>
    /// <param name="ratio">γ, over 0.</param>
    /// <param name="seen">Σ of area times coefficient times height, m³, over 0.</param>
    public static Speed TippingGust(Mass mass, Length arm, double ratio, Volume seen) =>
        Speed.FromMetersPerSecond(Math.Sqrt(Math.Max(0, 2 * Gravity * mass.Kilograms * arm.Meters) / (WindPressure.Density * ratio * seen.CubicMeters)));

    /// <summary>The gust at which it slides with a ratio to spare: <c>v = √(2 · g · m · h / (ρ · γ · A))</c>; 0 where it slides by itself.</summary>
    /// <param name="mass">kg.</param>
    /// <param name="grip">See <see cref="Grip"/>.</param>
    /// <param name="ratio">γ, over 0.</param>
    /// <param name="seen">Σ of area times coefficient, m², over 0.</param>
    public static Speed SlidingGust(Mass mass, double grip, double ratio, Area seen) =>
        Speed.FromMetersPerSecond(Math.Sqrt(Math.Max(0, 2 * Gravity * mass.Kilograms * grip) / (WindPressure.Density * ratio * seen.SquareMeters)));
}
