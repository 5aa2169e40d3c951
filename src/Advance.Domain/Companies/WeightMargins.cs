using Advance.Domain.Facts;

namespace Advance.Domain.Companies;

/// <summary>What is added to a weight, by how it is known; in per cent, 0 or more.</summary>
/// <param name="Weighed">On what was weighed.</param>
/// <param name="Maker">On a maker's figure.</param>
/// <param name="Estimated">On a guess, and on what nobody says how it is known.</param>
public readonly record struct WeightMargins(double Weighed, double Maker, double Estimated)
{
    /// <summary>The margin on a weight, in per cent.</summary>
    public double On(Known how) => how switch
    {
        Known.Weighed => Weighed,
        Known.Maker => Maker,
        _ => Estimated,
    };
}
