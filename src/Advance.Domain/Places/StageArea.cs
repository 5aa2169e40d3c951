namespace Advance.Domain.Places;

/// <summary>One of the nine areas of a stage, as the performer sees them who faces the audience.</summary>
public enum StageArea
{
    /// <summary><c>DSR</c></summary>
    DownstageRight,

    /// <summary><c>DSC</c></summary>
    DownstageCentre,

    /// <summary><c>DSL</c></summary>
    DownstageLeft,

    /// <summary><c>SR</c></summary>
    StageRight,

    /// <summary><c>C</c></summary>
    Centre,

    /// <summary><c>SL</c></summary>
    StageLeft,

    /// <summary><c>USR</c></summary>
    UpstageRight,

    /// <summary><c>USC</c></summary>
    UpstageCentre,

    /// <summary><c>USL</c></summary>
    UpstageLeft,
}
