namespace Advance.Paper.Tree;

/// <summary>How much a remark weighs.</summary>
public enum RemarkWeight
{
    /// <summary>Not to be issued like this: STOP.</summary>
    Stop,

    /// <summary>To be thought about: CONCERN.</summary>
    Concern,

    /// <summary>Good to know: no word, a thin bar.</summary>
    Note,
}
