using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>What a leg, or a drop, is made of from the stock.</summary>
/// <param name="Parts">Steels, longest first, then the chain that makes up the rest.</param>
/// <param name="Length">With its shackles, m.</param>
public sealed record LegMade(IReadOnlyList<Kind> Parts, double Length)
{
    /// <summary>How much of its last part, a chain, is used, m; null where it has none.</summary>
    public double? ChainUsed { get; init; }

    /// <summary>The shackles at its ends and joints; null where the stock has none.</summary>
    public Kind? Shackle { get; init; }

    /// <summary>How many shackles.</summary>
    public int Shackles => Shackle is null ? 0 : Parts.Count + 1;

    /// <summary>How many links of the chain are used; null where it has none.</summary>
    public int? Links => ChainUsed is { } used && Parts[^1].Lifting?.Step is { IsKnown: true } step ? (int)Math.Round(used / step.Value.Meters, MidpointRounding.AwayFromZero) : null;
}
