namespace Advance.Sheets.Drawings;

/// <summary>
/// Where heights of the room come to stand in the side view of a truss. What is under it and what is over it is drawn no higher than a few metres, so
/// that the truss itself fills the paper; dimensions say the real heights.
/// </summary>
/// <param name="Trim">Of its lower chord above the floor, in metres.</param>
/// <param name="Steel">The highest point that it hangs on, in metres.</param>
/// <param name="Stretch">How many times higher all is drawn, so that a long truss, at a smaller scale, can still be read.</param>
/// <param name="MoreBelow">In metres: how much more of what is under it is drawn, for loads in two tiers.</param>
internal sealed record TrussHeights(double Trim, double Steel, double Stretch = 1, double MoreBelow = 0)
{
    // A truss of up to this length, in metres, is drawn as high as it is deep.
    private const double Short = 16;

    // How high a truss is, in metres.
    private const double Depth = 0.3;

    private const double MostBelow = 1.9;
    private const double MostAbove = 2.2;

    /// <summary>Of its lower chord, as drawn.</summary>
    public double Lower => Math.Min(Trim, MostBelow + MoreBelow) * Stretch;

    /// <summary>Of its upper chord, as drawn.</summary>
    public double Upper => Lower + (Depth * Stretch);

    /// <summary>How many times higher a truss of this length is drawn.</summary>
    /// <param name="length">In metres.</param>
    public static double StretchOf(double length) => Math.Max(1, length / Short);

    /// <summary>Where nobody knows how high the steel is: so far above the upper chord.</summary>
    /// <param name="trim">In metres.</param>
    /// <param name="above">In metres.</param>
    public static double SteelOver(double trim, double above) => trim + Depth + above;

    /// <summary>Whether something is drawn lower than it is.</summary>
    public bool IsCut => Trim > MostBelow + MoreBelow || Above > MostAbove || Stretch > 1;

    private double Above => Steel - Trim - Depth;

    /// <summary>Of something over the truss, as drawn.</summary>
    /// <param name="height">Above the floor, in metres.</param>
    public double Of(double height) => Upper + ((height - Trim - Depth) * Stretch * (Above > MostAbove ? MostAbove / Above : 1));
}
