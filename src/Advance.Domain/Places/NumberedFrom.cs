namespace Advance.Domain.Places;

/// <summary>From which end a row of like things is counted: <c>from SR</c>.</summary>
public enum NumberedFrom
{
    /// <summary><c>from SR</c></summary>
    StageRight,

    /// <summary><c>from SL</c></summary>
    StageLeft,

    /// <summary><c>from downstage</c></summary>
    Downstage,

    /// <summary><c>from upstage</c></summary>
    Upstage,
}
