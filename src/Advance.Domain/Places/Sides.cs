namespace Advance.Domain.Places;

/// <summary>On which sides a thing stands: <c>SR</c>, or <c>SR SL</c> for a mirrored pair. What is listed for a pair follows this order.</summary>
/// <param name="First">The only side, or the first of the pair.</param>
/// <param name="Second">The other side of a pair, never the same as the first; null for one side.</param>
public readonly record struct Sides(Side First, Side? Second = null)
{
    /// <summary>One side or two, in the order written.</summary>
    public IReadOnlyList<Side> InOrder => Second is { } second ? [First, second] : [First];
}
