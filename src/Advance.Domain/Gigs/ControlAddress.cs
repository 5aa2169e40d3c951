namespace Advance.Domain.Gigs;

/// <summary>Where a fixture listens: a universe and its first slot in it.</summary>
/// <param name="Universe">From 1.</param>
/// <param name="Slot">From 1; a universe has 512, which a rule watches.</param>
public readonly record struct ControlAddress(int Universe, int Slot)
{
    /// <summary><c>1/25</c></summary>
    public override string ToString() => $"{Universe}/{Slot}";
}
