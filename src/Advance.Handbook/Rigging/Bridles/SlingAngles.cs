namespace Advance.Handbook;

/// <summary>What an angle does to legs, blocks and ropes. Source: <see cref="Statics.Bridles"/>.</summary>
public static class SlingAngles
{
    /// <summary>How many times its straight share a leg carries: <c>1 / sin α</c>.</summary>
    /// <param name="fromHorizontal">α, degrees, over 0 to 90.</param>
    public static double Factor(double fromHorizontal) => 1 / Reduction(fromHorizontal);

    /// <summary>Which share of its straight rating a leg has left: <c>sin α</c>.</summary>
    /// <param name="fromHorizontal">α, degrees, over 0 to 90.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is none of these.</exception>
    public static double Reduction(double fromHorizontal)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(fromHorizontal);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(fromHorizontal, 90);
        return Math.Sin(fromHorizontal * Math.PI / 180);
    }

    /// <summary>Each of equal legs: <c>T = W / (n sin α)</c>.</summary>
    /// <param name="load">W.</param>
    /// <param name="legs">n, two, or three that share evenly.</param>
    /// <param name="fromHorizontal">α, degrees, over 0 to 90.</param>
    public static double EqualLegs(double load, int legs, double fromHorizontal) => load / (legs * Reduction(fromHorizontal));

    /// <summary>What a block is pulled with by the rope around it: <c>2 W cos(θ / 2)</c>.</summary>
    /// <param name="load">W, the pull in the rope.</param>
    /// <param name="between">θ, degrees between the two parts of the rope.</param>
    public static double OnBlock(double load, double between) => 2 * load * Math.Cos(between * Math.PI / 360);
}
