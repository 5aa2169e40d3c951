namespace Advance.Domain.Stocks;

/// <summary>A way that a fixture may be set.</summary>
/// <param name="Name">The maker's name for it.</param>
/// <param name="Slots">How many slots it takes, 1 to 512.</param>
public sealed record ModeRow(string Name, int Slots);
