using UnitsNet;

namespace Advance.Domain.Companies;

/// <summary>How full a truck may be.</summary>
/// <param name="Payload">Of what it may carry.</param>
/// <param name="Floor">Of the length of its floor.</param>
/// <param name="StrapEach">How much of its length one strap holds.</param>
public readonly record struct LoadLimits(Ratio Payload, Ratio Floor, Length StrapEach)
{
    /// <summary>The settings shipped.</summary>
    public static readonly LoadLimits Default = new(Ratio.FromPercent(90), Ratio.FromPercent(85), Length.FromMeters(2.4));
}
