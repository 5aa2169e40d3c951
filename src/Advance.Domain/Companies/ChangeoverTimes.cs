using UnitsNet;

namespace Advance.Domain.Companies;

/// <summary>How long it takes to get from one act to the next.</summary>
public sealed record ChangeoverTimes
{
    /// <summary>The settings shipped.</summary>
    public static readonly ChangeoverTimes Default = new();

    /// <summary><c>strike-and-set</c>: one act off, the next on, without rolling risers.</summary>
    public Duration StrikeAndSet { get; init; } = Minutes(20);

    /// <summary><c>re-patch</c>: one line; <see cref="PatchHands"/> share them.</summary>
    public Duration RePatch { get; init; } = Minutes(1);

    /// <summary><c>patch-hands</c>: how many patch, at least 1.</summary>
    public int PatchHands { get; init; } = 2;

    /// <summary><c>check</c>: of one line or mix of the next act.</summary>
    public Duration Check { get; init; } = Duration.FromSeconds(20);

    /// <summary><c>hand-over</c>: until the stage is the next act's.</summary>
    public Duration HandOver { get; init; } = Minutes(3);

    /// <summary><c>at-least</c>: whatever the sums say, where all of it comes in one vehicle.</summary>
    public Duration AtLeast { get; init; } = Minutes(15);

    /// <summary><c>at-least-festival</c>: the same where it takes more.</summary>
    public Duration AtLeastFestival { get; init; } = Minutes(20);

    /// <summary><c>use</c>: how much of the gap it may fill.</summary>
    public Ratio Use { get; init; } = Ratio.FromPercent(90);

    private static Duration Minutes(double minutes) => Duration.FromSeconds(minutes * 60);
}
