using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>One box, how its signal gets there, and what is set on it.</summary>
/// <param name="Address">That of its piece.</param>
/// <param name="Stack">The stack it stands in.</param>
/// <param name="Box">The box.</param>
/// <param name="Path">The way of its signal.</param>
/// <param name="In">What feeds it; null where nothing does.</param>
/// <param name="Out">What it hands its signal on to.</param>
/// <param name="Output">The processor's output that it hangs on; null where it hangs on none.</param>
/// <param name="Set">What is set on the box itself.</param>
/// <param name="Crossings">What parts lows from highs on the way, the box itself included.</param>
public sealed record DrivenBox(
    Address Address,
    StackPlan Stack,
    StackedBox Box,
    SignalPath Path,
    Link? In,
    IReadOnlyList<Link> Out,
    DriveOutput? Output,
    DriveSettings Set,
    IReadOnlyList<Crossing> Crossings)
{
    /// <summary>For a rear-facing box, by how much it must be later than the front of its stack; null for any other.</summary>
    public Figure<Duration>? RearDelay { get; init; }

    /// <summary>For a rear-facing box, the frequency that it cancels best; null for any other.</summary>
    public Figure<Frequency>? QuarterWave { get; init; }

    /// <summary>Where its electronic aim throws, up from the level: a box on its head throws the other way. Null where it has none.</summary>
    public Figure<Angle>? Throw => Set.Aim is { } aim && Box.IsUpsideDown
        ? aim with { Value = aim.Value is { } angle ? Angle.FromDegrees(-angle.Degrees) : null, Why = Reason.Derived.It }
        : Set.Aim;

    /// <summary>Its numbers, each under its address.</summary>
    public IReadOnlyList<Stated> Figures =>
    [
        .. Set.Delay.Value is not { Seconds: 0 } ? [Stated.Of(Address / "delay", $"{Box.Piece.Name}, delay", Set.Delay)] : Array.Empty<Stated>(),
        .. RearDelay is { } rear ? [Stated.Of(Address / "rear-delay", $"{Box.Piece.Name}, later than the front", rear)] : Array.Empty<Stated>(),
        .. QuarterWave is { } wave ? [Stated.Of(Address / "quarter-wave", $"{Box.Piece.Name}, cancels best at", wave)] : Array.Empty<Stated>(),
        .. Set.Aim is { } aim ? [Stated.Of(Address / "electronic-aim", $"{Box.Piece.Name}, electronic aim", aim)] : Array.Empty<Stated>(),
    ];
}
