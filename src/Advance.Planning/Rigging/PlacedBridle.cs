using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary>A bridle, placed, before anybody knows what hangs on it.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="Bridle">As written.</param>
/// <param name="Legs">In the order of its points.</param>
public sealed record PlacedBridle(Address Address, Bridle Bridle, IReadOnlyList<PlacedLeg> Legs)
{
    /// <summary>Its points, m; empty where one is not known.</summary>
    public IReadOnlyList<RiggingPoint> Anchors { get; init; } = [];

    /// <summary>Where its hook is wanted; null where nobody knows.</summary>
    public RiggingPoint? Wanted { get; init; }

    /// <summary>Where its hook comes to hang with the legs as they are made; null where nobody knows.</summary>
    public RiggingPoint? Apex { get; init; }

    /// <summary>Whether legs were to be chosen and the stock has none that hang its hook near enough.</summary>
    public bool IsOff { get; init; }

    /// <summary>How near the stock could hang it at best, m; null where its legs do not meet, or none were to be chosen.</summary>
    public double? Nearest { get; init; }

    /// <summary>The pick that its hook is wanted under, where nobody knows where that is; null otherwise.</summary>
    public string? Lost { get; init; }

    /// <summary>The open questions behind how it lies.</summary>
    public Doubts RestsOn { get; init; } = Doubts.None;

    /// <summary>From the apex to the points, m; empty where nobody knows.</summary>
    public IReadOnlyList<RiggingPoint> Ways => Apex is { } apex ? [.. Anchors.Select(anchor => anchor - apex)] : [];

    /// <summary>The part of what hangs on it that goes straight down on each point; empty where nobody knows.</summary>
    public IReadOnlyList<double> Shares => Apex is null ? [] : BridleGeometry.SharesOf(Ways);
}
