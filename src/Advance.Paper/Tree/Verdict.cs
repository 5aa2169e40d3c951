namespace Advance.Paper.Tree;

/// <summary>How a figure fared when it was judged.</summary>
public enum Verdict
{
    /// <summary>It holds, or there was nothing to judge.</summary>
    Plain,

    /// <summary>Something is not known: the place is hatched.</summary>
    CannotBeJudged,

    /// <summary>It is over its limit: the place is framed with a heavy line.</summary>
    Fails,
}
