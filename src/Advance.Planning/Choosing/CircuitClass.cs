namespace Advance.Planning;

/// <summary>Wishes that have the same ways up and the same earth, as one.</summary>
/// <param name="Ways">Which ways, by their place among all ways.</param>
/// <param name="Earth">Of all of them.</param>
/// <param name="Draws">Together, in each state.</param>
internal sealed record CircuitClass(int[] Ways, CircuitEarth Earth, long[] Draws);
