namespace Advance.Domain.Stocks;

/// <summary>How moment and shear in one place of a truss add up, each as a part of what is allowed.</summary>
public enum MomentAndShear
{
    /// <summary><c>added</c>: the one and the other.</summary>
    Added,

    /// <summary><c>squared</c>: their squares.</summary>
    Squared,

    /// <summary><c>apart</c>: each counts alone.</summary>
    Apart,
}
