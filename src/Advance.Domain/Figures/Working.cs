namespace Advance.Domain.Figures;

/// <summary>How a figure came about, enough for a licensed person to check it by hand.</summary>
/// <param name="Name">What is worked out, in words.</param>
/// <param name="Formula">In symbols: <c>spare = max(1, ⌈share · need⌉)</c>.</param>
/// <param name="Inputs">What was put in, in the order of the formula.</param>
/// <param name="Result">The value, or null where an input is unknown.</param>
/// <param name="Source">Where the formula stands.</param>
public sealed record Working(string Name, string Formula, IReadOnlyList<Input> Inputs, object? Result, Publication Source);
