namespace Advance.Reading.Phrases;

/// <summary>A unit as it is written.</summary>
/// <param name="Symbol">As written: <c>kg</c>. A second spelling is a unit of its own.</param>
/// <param name="Factor">How many base units one of it is.</param>
/// <param name="Shift">Added after the factor; 0 for all but temperatures.</param>
/// <param name="IsOffered">Whether findings name it among those to choose from.</param>
internal sealed record Unit(string Symbol, double Factor, double Shift = 0, bool IsOffered = true)
{
    /// <summary>So many of it, in base units. Worked out in decimals, so that 12 ft and 3.6576 m are the same.</summary>
    public double InBaseUnits(double number) => (double)((decimal)number * (decimal)Factor) + Shift;
}
