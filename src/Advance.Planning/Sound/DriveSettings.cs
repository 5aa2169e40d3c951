using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What is set on one output of a processor, or on one box.</summary>
/// <param name="Polarity">Which way round it drives.</param>
/// <param name="Gain">0 dB where nobody says otherwise.</param>
/// <param name="Delay">A start value.</param>
/// <param name="DelayFrom">What it is delayed from, in words; empty for no delay.</param>
public sealed record DriveSettings(Setting<Polarity> Polarity, Figure<Level> Gain, Figure<Duration> Delay, string DelayFrom)
{
    /// <summary>Nothing set but what everything starts from.</summary>
    public static readonly DriveSettings Neutral = new(
        new Setting<Polarity>(Domain.Gigs.Polarity.Normal, Reason.Derived.It, Doubts.None),
        new Figure<Level>(Level.Zero, Doubts.None, Reason.Derived.It),
        new Figure<Duration>(Duration.Zero, Doubts.None, Reason.Derived.It),
        "");

    /// <summary>How far sound goes in the time of the delay, for whoever checks it with a tape; null where it is not delayed.</summary>
    public Figure<Length>? DelayWay { get; init; }

    /// <summary>Below what the lows are taken out; null for nowhere.</summary>
    public Figure<Frequency>? HighPass { get; init; }

    /// <summary>Above what the highs are taken out; null for nowhere.</summary>
    public Figure<Frequency>? LowPass { get; init; }

    /// <summary>Electronic aim, up from the box's own axis; null for what has none.</summary>
    public Figure<Angle>? Aim { get; init; }

    /// <summary>Whether it is muted when it is switched on; null for a box, which is muted by what drives it.</summary>
    public Setting<bool>? StartsMuted { get; init; }
}
