using UnitsNet;

namespace Advance.Handbook;

/// <summary>What wind does to something that hangs free. Source: <see cref="RigidBodies.Balance"/>.</summary>
public static class HungInWind
{
    /// <summary>How far it swings out: <c>θ = atan(F / (g · m))</c>.</summary>
    /// <param name="push">N, 0 or more.</param>
    /// <param name="mass">kg, over 0.</param>
    public static Angle Swing(Force push, Mass mass) => Angle.FromRadians(Math.Atan(push.Newtons / (TipAndSlide.Gravity * mass.Kilograms)));

    /// <summary>What its suspension gets: <c>T = √(F² + (g · m)²)</c>.</summary>
    /// <param name="push">N.</param>
    /// <param name="mass">kg.</param>
    public static Force Pull(Force push, Mass mass)
    {
        var weight = TipAndSlide.Gravity * mass.Kilograms;
        return Force.FromNewtons(Math.Sqrt((push.Newtons * push.Newtons) + (weight * weight)));
    }
}
