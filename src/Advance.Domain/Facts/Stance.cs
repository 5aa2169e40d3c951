namespace Advance.Domain.Facts;

/// <summary>How a piece stands or hangs other than as usual.</summary>
[Flags]
public enum Stance
{
    /// <summary>As usual.</summary>
    Usual = 0,

    /// <summary><c>upside-down</c></summary>
    UpsideDown = 1,

    /// <summary><c>rear-facing</c>: its front looks away from the aim.</summary>
    RearFacing = 2,
}
