namespace Advance.Planning;

/// <summary>Something that wants an outlet.</summary>
/// <param name="Units">How many loads stay dark without it, at least 1.</param>
/// <param name="Draws">In use, in each show state.</param>
/// <param name="Earth">What other supplies it must not meet.</param>
/// <param name="Options">Groups that fit, in the order in which they are preferred where nothing else decides.</param>
/// <param name="IsFixed">Whether somebody fixed it by hand; then the options say which of them keep to that.</param>
/// <param name="Earlier">The group it had in the last issue; null where there was none, or it is gone.</param>
internal sealed record CircuitWish(
    int Units, IReadOnlyList<int> Draws, CircuitEarth Earth, IReadOnlyList<CircuitOption> Options, bool IsFixed = false, int? Earlier = null)
{
    /// <summary>Current in its protective conductor, in 10 microamperes.</summary>
    public int Leakage { get; init; }

    /// <summary>Peak when it is switched on, in 10 mA.</summary>
    public int Inrush { get; init; }

    /// <summary>The most it draws in any state.</summary>
    public int Most { get; } = Draws.DefaultIfEmpty().Max();
}
