namespace Advance.Domain.Stocks;

/// <summary>What a joint is good for.</summary>
public enum JointUse
{
    /// <summary><c>standing</c></summary>
    Standing,

    /// <summary><c>hanging</c></summary>
    Hanging,

    /// <summary><c>both</c></summary>
    Both,
}
