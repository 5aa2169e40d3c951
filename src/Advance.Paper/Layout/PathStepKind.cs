namespace Advance.Paper.Layout;

/// <summary>How a path goes on.</summary>
internal enum PathStepKind
{
    /// <summary>Begins anew there.</summary>
    Move,

    /// <summary>Straight.</summary>
    Line,

    /// <summary>By a cubic curve.</summary>
    Curve,

    /// <summary>Back to where it began; its point is that one.</summary>
    Close,
}
