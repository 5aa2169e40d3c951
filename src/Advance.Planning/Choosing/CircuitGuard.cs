namespace Advance.Planning;

/// <summary>A device that opens by something else than the current in use: leakage through it, or everything on it switched on at once.</summary>
/// <param name="Limit">What it bears: leakage in 10 microamperes, inrush in 10 mA, as peak.</param>
/// <param name="IsLeakage">Whether it is a residual-current device; else what it bears is inrush.</param>
internal sealed record CircuitGuard(int Limit, bool IsLeakage);
