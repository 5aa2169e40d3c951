namespace Advance.Planning;

/// <summary>Where one box stands on another.</summary>
/// <param name="Lower">The one below.</param>
/// <param name="Upper">The one above.</param>
public sealed record Interface(StackedBox Lower, StackedBox Upper)
{
    /// <summary>Whether a joint is wanted: between two loudspeakers. On a plinth or a stand a box just stands.</summary>
    public bool WantsJoint => Lower.IsLoudspeaker && Upper.IsLoudspeaker;

    /// <summary>Whether the stock knows both, so that it can be said whether they mate.</summary>
    public bool IsKnown => Lower.Piece.Kind is not null && Upper.Piece.Kind is not null;
}
