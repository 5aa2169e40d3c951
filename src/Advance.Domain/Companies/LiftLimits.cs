using UnitsNet;

namespace Advance.Domain.Companies;

/// <summary>What people may lift together, with handles; what is heavier goes by forks or on wheels.</summary>
/// <param name="One">One person.</param>
/// <param name="Two">Two, at least as much as one.</param>
/// <param name="Four">Four, at least as much as two.</param>
public readonly record struct LiftLimits(Mass One, Mass Two, Mass Four)
{
    /// <summary>The settings shipped.</summary>
    public static readonly LiftLimits Default = new(Mass.FromKilograms(25), Mass.FromKilograms(45), Mass.FromKilograms(80));
}
