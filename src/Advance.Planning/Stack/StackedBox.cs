using Advance.Domain.Facts;
using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>A box in a stack or a hang, and which way up it is.</summary>
/// <param name="Piece">The box.</param>
/// <param name="Stance">As written.</param>
public sealed record StackedBox(Piece Piece, Stance Stance)
{
    /// <summary>1 for the lowest, of a hang for the highest; 0 for its frame.</summary>
    public int Position { get; init; } = 1;

    /// <summary>How high it is.</summary>
    public Figure<Length> Height { get; init; } = new(null, Doubts.None, Reason.Derived.It);

    /// <summary>How far its underside is above what the stack stands on, of a hang above its lowest box's.</summary>
    public Figure<Length> Base { get; init; } = new(null, Doubts.None, Reason.Derived.It);

    /// <summary>What joins it to the one below, of a hang to the one above; null for the lowest, and where no joint fits.</summary>
    public StackJoint? Joint { get; init; }

    /// <summary>The position of the box that it is paired with, the ends together that the stock says; null where it is paired with none.</summary>
    public int? PairedWith { get; init; }

    /// <summary>Whether it stands on its head.</summary>
    public bool IsUpsideDown => Stance.HasFlag(Stance.UpsideDown);

    /// <summary>Whether its front looks away from the aim.</summary>
    public bool IsRearFacing => Stance.HasFlag(Stance.RearFacing);

    /// <summary>Whether it is a loudspeaker, as far as anybody knows; what has a kind without loudspeaker's facts is a plinth or a stand.</summary>
    public bool IsLoudspeaker => Piece.Kind is null || Piece.Kind.Loudspeaker is not null;

    /// <summary>Whether it plays only the lows.</summary>
    public bool IsSub { get; init; }

    /// <summary>What its link hands on: <c>full</c>, <c>high-passed</c>; empty where the stock does not say, null where it has no link.</summary>
    public string? HandsOn => Signals.Row(Piece.Kind, PortKind.Link)?.HandsOn;

    /// <summary>Whether its link hands on only the highs, so that it crosses for whatever is linked from it.</summary>
    public bool IsCrossing => HandsOn == "high-passed";

    /// <summary>The mating face that looks up; null where the stock says none.</summary>
    public string? TopFace => IsUpsideDown ? Piece.Kind?.Loudspeaker?.Below : Piece.Kind?.Loudspeaker?.Top;

    /// <summary>The mating face that looks down; null where the stock says none.</summary>
    public string? BottomFace => IsUpsideDown ? Piece.Kind?.Loudspeaker?.Top : Piece.Kind?.FlyingFrame?.Below ?? Piece.Kind?.Loudspeaker?.Below;

    /// <summary>Whether this box may be paired with another.</summary>
    public bool MayPairWith(StackedBox other) =>
        Piece.Kind?.Loudspeaker?.MayPairWith == other.Piece.Item || other.Piece.Kind?.Loudspeaker?.MayPairWith == Piece.Item;
}
