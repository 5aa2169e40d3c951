using UnitsNet;

namespace Advance.Handbook;

/// <summary>How much fixed weight is missing. Source: <see cref="RigidBodies.Balance"/>.</summary>
public static class Ballasting
{
    /// <summary>Against tipping: <c>B = max(0, γ · M - R) / (g · b)</c>.</summary>
    /// <param name="ratio">γ.</param>
    /// <param name="moment">That tips, N·m.</param>
    /// <param name="holds">The moment that holds already, N·m.</param>
    /// <param name="arm">Of the ballast inside the edge, m, over 0.</param>
    public static Mass AgainstTipping(double ratio, Torque moment, Torque holds, Length arm) =>
        Mass.FromKilograms(Math.Max(0, (ratio * moment.NewtonMeters) - holds.NewtonMeters) / (TipAndSlide.Gravity * arm.Meters));

    /// <summary>Against sliding: <c>B = max(0, γ · F / (g · h) - m)</c>.</summary>
    /// <param name="ratio">γ.</param>
    /// <param name="push">N.</param>
    /// <param name="grip">See <see cref="TipAndSlide.Grip"/>, over 0.</param>
    /// <param name="mass">That stands there already, kg.</param>
    public static Mass AgainstSliding(double ratio, Force push, double grip, Mass mass) =>
        Mass.FromKilograms(Math.Max(0, (ratio * push.Newtons / (TipAndSlide.Gravity * grip)) - mass.Kilograms));
}
