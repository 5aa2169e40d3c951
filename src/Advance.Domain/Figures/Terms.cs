namespace Advance.Domain.Figures;

/// <summary>The terms of a total.</summary>
/// <param name="Values">In the order they were put in.</param>
public readonly record struct Terms<T>(IReadOnlyList<T> Values) : ITerms
    where T : struct
{
    /// <inheritdoc/>
    public IEnumerable<object> Objects => Values.Select(value => (object)value);
}
