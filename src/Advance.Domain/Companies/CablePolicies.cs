using UnitsNet;

namespace Advance.Domain.Companies;

/// <summary>How long a lead must be and how leads are put together: the <c>cables</c> of the company's policies. Common practice, no source.</summary>
public sealed record CablePolicies
{
    /// <summary>The settings shipped.</summary>
    public static readonly CablePolicies Default = new();

    /// <summary><c>slack</c>: more than the path, because a lead does not lie straight; per cent, 0 or more.</summary>
    public double Slack { get; init; } = 10;

    /// <summary><c>climb</c>: least for going up or down the edge of a deck; a deck that is higher counts with its height.</summary>
    public Length Climb { get; init; } = Length.FromMeters(1);

    /// <summary><c>ramp</c>: for each ramp or bridge that a lead goes up and over on.</summary>
    public Length Ramp { get; init; } = Length.FromMeters(1);

    /// <summary><c>drop-floor</c>: along the floor below what hangs, on top of how high it hangs.</summary>
    public Length DropFloor { get; init; } = Length.FromMeters(3);

    /// <summary><c>drop-truss</c>: at a connector that hangs, in place of another end trim.</summary>
    public Length DropTruss { get; init; } = Length.FromMeters(1);

    /// <summary><c>near</c>: what is not further is joined straight, and a way is reached straight.</summary>
    public Length Near { get; init; } = Length.FromMeters(3);

    /// <summary><c>trims</c>: left at the ends.</summary>
    public CableTrims Trims { get; init; } = CableTrims.Default;

    /// <summary><c>joins</c>: the most joins in one run.</summary>
    public CableJoins Joins { get; init; } = CableJoins.Default;

    /// <summary><c>surplus-share</c>: left over beyond this share of what is needed is worth a note, in per cent…</summary>
    public double SurplusShare { get; init; } = 30;

    /// <summary><c>surplus-length</c>: …if it is also longer than this.</summary>
    public Length SurplusLength { get; init; } = Length.FromMeters(5);

    /// <summary><c>loom-runs</c>: so many runs are a loom, 2 or more…</summary>
    public int LoomRuns { get; init; } = 4;

    /// <summary><c>loom-share</c>: …if they share so much of their way, in per cent.</summary>
    public double LoomShare { get; init; } = 70;
}
