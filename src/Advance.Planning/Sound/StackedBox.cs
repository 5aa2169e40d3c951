using Advance.Domain.Facts;

namespace Advance.Planning;

/// <summary>A box in a stack, and which way up it stands.</summary>
/// <param name="Piece">The box.</param>
/// <param name="Stance">As written.</param>
public sealed record StackedBox(Piece Piece, Stance Stance)
{
    /// <summary>The mating face that looks up; null where the stock says none.</summary>
    public string? TopFace => IsUpsideDown ? Piece.Kind?.Loudspeaker?.Below : Piece.Kind?.Loudspeaker?.Top;

    /// <summary>The mating face that looks down; null where the stock says none.</summary>
    public string? BottomFace => IsUpsideDown ? Piece.Kind?.Loudspeaker?.Top : Piece.Kind?.Loudspeaker?.Below;

    private bool IsUpsideDown => Stance.HasFlag(Stance.UpsideDown);
}
