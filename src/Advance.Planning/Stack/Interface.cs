namespace Advance.Planning;

/// <summary>Where one box stands on another, or hangs from it.</summary>
/// <param name="Lower">The one below.</param>
/// <param name="Upper">The one above.</param>
public sealed record Interface(StackedBox Lower, StackedBox Upper)
{
    /// <summary>Whether the lower one hangs from the upper.</summary>
    public bool IsHanging { get; init; }

    /// <summary>The one that came to the other: the upper one, or the one that hangs.</summary>
    public StackedBox Joined => IsHanging ? Lower : Upper;

    /// <summary>What joins them; null where no joint fits.</summary>
    public StackJoint? Joint => Joined.Joint;

    /// <summary>Whether a joint is wanted: where one hangs, and between two loudspeakers. On a plinth or a stand a box just stands.</summary>
    public bool WantsJoint => IsHanging || (Lower.IsLoudspeaker && Upper.IsLoudspeaker);

    /// <summary>Whether the stock knows both, so that it can be said whether they mate.</summary>
    public bool IsKnown => Lower.Piece.Kind is not null && Upper.Piece.Kind is not null;
}
