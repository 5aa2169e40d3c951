namespace Advance.Planning;

/// <summary>How much of what its boxes want an output delays itself; the rest is set on the boxes.</summary>
public enum DelayedHere
{
    /// <summary>Nothing: it cannot, or its boxes want different things.</summary>
    Nothing,

    /// <summary>What somebody wrote.</summary>
    AsWritten,

    /// <summary>The timing of its stacks.</summary>
    Stack,

    /// <summary>The timing of its stacks, and what rear-facing boxes want besides.</summary>
    StackAndRear,
}
