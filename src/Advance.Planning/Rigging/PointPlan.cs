using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Venues;
using UnitsNet;

namespace Advance.Planning;

/// <summary>A point of the roof and all that hangs on it.</summary>
/// <param name="Point">The venue's.</param>
/// <param name="Hangs">Picks and bridles, on paper.</param>
/// <param name="AtRest">Straight down, at rest.</param>
/// <param name="Moving">Straight down, while it moves.</param>
/// <param name="Sideways">At rest; zero where all hangs straight.</param>
/// <param name="Bearing">Which way it is pulled sideways, in degrees clockwise from upstage; null where it is not.</param>
/// <param name="Limit">What it may carry.</param>
public sealed record PointPlan(
    RoofPoint Point, IReadOnlyList<string> Hangs, Figure<Mass> AtRest, Figure<Mass> Moving, Figure<Mass> Sideways, double? Bearing, Figure<Mass> Limit)
{
    /// <summary>Where the first thing on it was asked for.</summary>
    public required Mark At { get; init; }

    /// <summary>Seen from above; null where nobody knows.</summary>
    public Spot? Spot { get; init; }

    /// <summary>Straight down, when a load on it catches and its hoist pulls until the limiter slips; null where no hoist is on it.</summary>
    public Figure<Mass>? Snag { get; init; }

    /// <summary>What wind and lines push it sideways, whichever way they do; null where nothing does.</summary>
    public Figure<Mass>? Pushed { get; init; }

    /// <summary>Sideways at most: what always pulls, and what pushes the same way; where it may be pulled along one line alone, along that.</summary>
    public required Figure<Mass> SidewaysMost { get; init; }

    /// <summary>What it may be pulled sideways: as its venue says, else as far as it may be off plumb under what hangs on it.</summary>
    public required Figure<Mass> SidewaysLimit { get; init; }

    /// <summary>The same across the line that it may be pulled along; null where it may be pulled every way.</summary>
    public Figure<Mass>? Across { get; init; }

    /// <summary>What it may be pulled across that line: no more than counts as plumb.</summary>
    public required Figure<Mass> AcrossLimit { get; init; }

    /// <summary>Its name in the plan.</summary>
    public Address Address => Address.Of("rigging") / "point" / Point.Name;

    /// <summary>What its limit is for.</summary>
    public Figure<Mass> Counts => Point.IsForMoving ? Moving : AtRest;

    /// <summary>Whether it bears that.</summary>
    public Verdict Holds => Counts.AtMost(Limit);

    /// <summary>Whether it bears what pulls it sideways.</summary>
    public Verdict SidewaysHolds => AcrossHolds is Verdict.Fails ? Verdict.Fails : SidewaysMost.AtMost(SidewaysLimit) is var along && along != Verdict.Holds ? along : AcrossHolds;

    /// <summary>Whether it bears what pulls it across the line that it may be pulled along.</summary>
    public Verdict AcrossHolds => Across?.AtMost(AcrossLimit) ?? Verdict.Holds;

    /// <summary>Its numbers.</summary>
    internal IEnumerable<Stated> Figures =>
    [
        Stated.Of(Address / "at-rest", $"{Point.Name}, at rest", AtRest),
        Stated.Of(Address / "moving", $"{Point.Name}, while it moves", Moving),
        Stated.Of(Address / "sideways", $"{Point.Name}, sideways", Sideways),
        .. Pushed is null ? [] : new[] { Stated.Of(Address / "pushed", $"{Point.Name}, pushed sideways, whichever way", Pushed), Stated.Of(Address / "sideways-most", $"{Point.Name}, sideways at most", SidewaysMost) },
        .. Across is null ? [] : new[] { Stated.Of(Address / "across", $"{Point.Name}, across the line that it may be pulled along", Across), Stated.Of(Address / "across-limit", $"{Point.Name}, allowed across that line", AcrossLimit) },
        .. SidewaysMost.Value is { Kilograms: 0 } ? [] : new[] { Stated.Of(Address / "sideways-limit", $"{Point.Name}, sideways allowed", SidewaysLimit) },
        .. Snag is null ? [] : new[] { Stated.Of(Address / "snag", $"{Point.Name}, when a load catches", Snag) },
    ];
}
