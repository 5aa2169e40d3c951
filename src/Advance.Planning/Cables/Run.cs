using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>
/// One cable path from a connector to a connector, made of one lead or several. Where acts use the same port of a stage box one after the
/// other, they use the same leads: it is one run with several links.
/// </summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="Label">As written on the leads.</param>
/// <param name="Link">What it makes; of several, the one that takes the longest.</param>
/// <param name="Needed">How long it must be; unknown where an end is nowhere.</param>
/// <param name="Leads">From the source on; empty where none was found, or how long it must be is unknown.</param>
/// <param name="MadeUp">The length of the leads together; unknown where there are none.</param>
public sealed record Run(
    Address Address, string Label, Link Link, Figure<Length> Needed, IReadOnlyList<Kind> Leads, Figure<Length> MadeUp)
{
    /// <summary>Everything it makes, at different times.</summary>
    public required IReadOnlyList<Link> Links { get; init; }

    /// <summary>What is left over; unknown where there are no leads.</summary>
    public required Figure<Length> Surplus { get; init; }

    /// <summary>The way it takes; null where an end is nowhere.</summary>
    public required Route? Route { get; init; }

    /// <summary>The most joins by policy.</summary>
    public required Figure<int> MostJoins { get; init; }

    /// <summary>Why it has no leads.</summary>
    public required RunGap Gap { get; init; }

    /// <summary>The longest that owned leads could make between its connectors, however many there are; 0 where nothing fits.</summary>
    public required Length Longest { get; init; }

    /// <summary>Where what is left over is coiled.</summary>
    public required LinkEnd LeftOverAt { get; init; }

    /// <summary>The loom that it is part of; null where it lies alone.</summary>
    public string? Loom { get; init; }

    /// <summary>How many times two leads are plugged together.</summary>
    public int Joins => Math.Max(0, Leads.Count - 1);

    /// <summary>Its numbers, each under its address.</summary>
    public IReadOnlyList<Stated> Figures =>
    [
        Stated.Of(Address / "needed", $"{Label}, length needed", Needed),
        Stated.Of(Address / "made-up", $"{Label}, length made up", MadeUp),
        Stated.Of(Address / "surplus", $"{Label}, left over", Surplus),
    ];
}
