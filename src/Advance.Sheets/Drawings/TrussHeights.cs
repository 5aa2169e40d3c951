namespace Advance.Sheets.Drawings;

/// <summary>
/// Where heights of the room come to stand in the side view of a truss. What is under it and what is over it is drawn no higher than a few metres, so
/// that the truss itself fills the paper; dimensions say the real heights.
/// </summary>
/// <param name="Trim">Of its lower chord above the floor, in metres.</param>
/// <param name="Steel">The highest point that it hangs on, in metres.</param>
internal sealed record TrussHeights(double Trim, double Steel)
{
    /// <summary>How high a truss is drawn, in metres.</summary>
    public const double Depth = 0.3;

    private const double MostBelow = 1.9;
    private const double MostAbove = 2.2;

    /// <summary>Of its lower chord, as drawn.</summary>
    public double Lower => Math.Min(Trim, MostBelow);

    /// <summary>Of its upper chord, as drawn.</summary>
    public double Upper => Lower + Depth;

    /// <summary>Whether something is drawn lower than it is.</summary>
    public bool IsCut => Trim > MostBelow || Above > MostAbove;

    private double Above => Steel - Trim - Depth;

    /// <summary>Of something over the truss, as drawn.</summary>
    /// <param name="height">Above the floor, in metres.</param>
    public double Of(double height) => Upper + ((height - Trim - Depth) * (Above > MostAbove ? MostAbove / Above : 1));
}
