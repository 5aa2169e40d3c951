namespace Advance.Planning;

/// <summary>Which outlets were chosen.</summary>
/// <param name="Taken">For each wish the option that was taken; null for none.</param>
/// <param name="Score">How good it is.</param>
/// <param name="IsProven">Whether nothing better exists.</param>
internal sealed record CircuitAnswer(IReadOnlyList<CircuitOption?> Taken, CircuitScore Score, bool IsProven);
