namespace Advance.Domain.Figures;

/// <summary>The terms of a total.</summary>
/// <param name="Values">In the order they were put in.</param>
public readonly record struct Terms<T>(IReadOnlyList<T> Values);
