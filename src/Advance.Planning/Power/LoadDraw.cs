namespace Advance.Planning;

/// <summary>A load at a place of the supply, and between which conductors it lies.</summary>
/// <param name="Load">The load.</param>
/// <param name="Wiring">Where it lies.</param>
public sealed record LoadDraw(PowerLoad Load, MainsWiring Wiring);
