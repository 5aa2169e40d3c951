using UnitsNet;

namespace Advance.Domain.Companies;

/// <summary>When people who work must eat.</summary>
/// <param name="By">Longest time without.</param>
/// <param name="For">How long a meal takes.</param>
public readonly record struct MealBreaks(Duration By, Duration For)
{
    /// <summary>The settings shipped.</summary>
    public static readonly MealBreaks Default = new(Duration.FromSeconds(5 * 3600), Duration.FromSeconds(30 * 60));
}
