using Advance.Domain.Gigs;
using UnitsNet;

namespace Advance.Domain.Companies;

/// <summary>How a company reckons what hangs. Common practice, no source.</summary>
public sealed record RiggingPolicies
{
    /// <summary>What is used where the company says nothing.</summary>
    public static readonly RiggingPolicies Default = new();

    /// <summary>What starting and stopping adds, as a factor on all that moves, 1 and more.</summary>
    public double DynamicFactor { get; init; } = 1.25;

    /// <summary>How far a hook may be off level at rest, at least.</summary>
    public Length Uneven { get; init; } = Length.FromMeters(0.010);

    /// <summary>How much later one hoist may start than another.</summary>
    public Duration StartLag { get; init; } = Duration.FromSeconds(0.25);

    /// <summary>How much faster one hoist may run than another, in per cent.</summary>
    public double SpeedSpread { get; init; } = 2;

    /// <summary>After how much travel hoists are levelled again.</summary>
    public Length LevelEvery { get; init; } = Length.FromMeters(2);

    /// <summary>Of a hoist whose speed nobody says.</summary>
    public Speed HoistSpeed { get; init; } = Speed.FromMetersPerSecond(4.0 / 60);

    /// <summary>What bears more of its rating, in per cent, is a concern.</summary>
    public double Use { get; init; } = 90;

    /// <summary>Between two legs of a bridle, beyond which it is a concern.</summary>
    public Angle BridleAngle { get; init; } = Angle.FromDegrees(90);

    /// <summary>What is left of the figures of truss that its maker gives for new truss, in per cent.</summary>
    public double UsedTruss { get; init; } = 85;

    /// <summary>How much chain stays on a hoist beyond what its lift needs.</summary>
    public Length ChainReserve { get; init; } = Length.FromMeters(1);

    /// <summary>What a hoist pulls at most when its load catches, times what it lifts, where nobody says when its limiter slips.</summary>
    public double Limiter { get; init; } = 1.6;

    /// <summary>How far from where it is wanted a bridle may hang its hook.</summary>
    public Length BridleWithin { get; init; } = Length.FromMeters(0.05);

    /// <summary>What is left over people of what a sling, steel or shackle may carry, in per cent.</summary>
    public double OverPeople { get; init; } = 50;

    /// <summary>How a roundsling is laid where nobody says.</summary>
    public SlingHitch Hitch { get; init; } = SlingHitch.Choked;

    /// <summary>What hangs higher above what is below it needs something that holds it when its fixing lets go.</summary>
    public Length BondAbove { get; init; } = Length.FromMeters(2);

    /// <summary>A pick that carries less of what it carries level, in per cent, is nearly slack.</summary>
    public double LeastPick { get; init; } = 10;

    /// <summary>How far a chain may be off plumb.</summary>
    public Angle OffPlumb { get; init; } = Angle.FromDegrees(3);

    /// <summary>What may hang between the nodes of a truss, in one place, where its maker does not say.</summary>
    public Mass BetweenNodes { get; init; } = Mass.FromKilograms(50);

    /// <summary>How far from a node still counts as at it.</summary>
    public Length AtNode { get; init; } = Length.FromMeters(0.1);

    /// <summary>How near a hang may come to the tilt that its maker's table ends at.</summary>
    public Angle NearTable { get; init; } = Angle.FromDegrees(2);

    /// <summary>How far a hang may tilt other than it is to.</summary>
    public Angle TiltTolerance { get; init; } = Angle.FromDegrees(1);
}
