namespace Advance.Planning;

/// <summary>The most and the least that a hoist carries over some cases; of cases alike the first is kept.</summary>
/// <param name="Most">N.</param>
/// <param name="Least">N, never less than 0.</param>
public sealed record HoistRange(HoistExtreme Most, HoistExtreme Least);
