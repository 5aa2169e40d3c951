namespace Advance.Domain.Places;

/// <summary>A side of the stage, as the performer sees it who faces the audience.</summary>
public enum Side
{
    /// <summary>To the performer's right, written <c>SR</c>.</summary>
    StageRight,

    /// <summary>To the performer's left, written <c>SL</c>.</summary>
    StageLeft,
}
