namespace Advance.Planning;

/// <summary>A group of outlets that fits a wish.</summary>
/// <param name="Group">Which.</param>
/// <param name="Distance">To be bridged by leads; an adapter counts as some more.</param>
/// <param name="Keeps">Whether it is what somebody fixed by hand.</param>
internal sealed record CircuitOption(int Group, int Distance, bool Keeps = false);
