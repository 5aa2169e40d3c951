using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Gigs;

/// <summary>What stands for kit that is not chosen yet: <c>allow: lighting 18 kW</c>. One of the two figures is there, or neither where it is TBC.</summary>
/// <param name="What">For what.</param>
/// <param name="Draw">Power drawn; null where it is a weight.</param>
/// <param name="Weight">What it weighs; null where it is power.</param>
/// <param name="At">Where it was written.</param>
public sealed record Allowance(string What, Given<UnitsNet.Power>? Draw, Given<Mass>? Weight, Mark At)
{
    /// <summary>The service or the distribution that it hangs on; empty where not said, which means the only service there is.</summary>
    public string FedBy { get; init; } = "";

    /// <summary>The open question where neither figure is there; null where one is.</summary>
    public Doubt? Doubt { get; init; }

    /// <summary>Whether it is power, or may be.</summary>
    public bool MayDraw => Draw is not null || Weight is null;

    /// <summary>Whether it is a weight, or may be.</summary>
    public bool MayWeigh => Weight is not null || Draw is null;
}
