namespace Advance.Planning;

/// <summary>What is wrong with how a distribution is fed.</summary>
public enum FeedFaultKind
{
    /// <summary>Nobody has said, and it does not follow from the rest.</summary>
    Open,

    /// <summary>It hangs on something that does not exist, or that feeds something else already.</summary>
    NoSuch,

    /// <summary>It hangs on two things at once.</summary>
    Twice,

    /// <summary>It hangs on itself, by way of others.</summary>
    Loop,

    /// <summary>Its inlet does not fit what it hangs on, and nothing owned joins them.</summary>
    DoesNotFit,
}
