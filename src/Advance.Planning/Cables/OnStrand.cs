namespace Advance.Planning;

/// <summary>A point of a network.</summary>
/// <param name="Strand">Which strand.</param>
/// <param name="Offset">So many metres from the strand's start.</param>
internal readonly record struct OnStrand(int Strand, double Offset);
