namespace Advance.Domain.Places;

/// <summary>Edges of a stage, as the performer sees them who faces the audience. Several may be meant at once.</summary>
[Flags]
public enum StageEdges
{
    /// <summary><c>none</c></summary>
    None = 0,

    /// <summary><c>front</c>: the downstage edge.</summary>
    Front = 1,

    /// <summary><c>rear</c>: the upstage edge.</summary>
    Rear = 2,

    /// <summary><c>SR</c></summary>
    StageRight = 4,

    /// <summary><c>SL</c></summary>
    StageLeft = 8,
}
