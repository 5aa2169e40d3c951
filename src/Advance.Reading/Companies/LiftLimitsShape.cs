using Advance.Domain.Companies;
using Advance.Reading.Shapes;

namespace Advance.Reading.Companies;

/// <summary>What people of a company lift together.</summary>
internal static class LiftLimitsShape
{
    public static readonly RecordShape<LiftLimits> It = new("lifts", "What people may lift together, with handles.", keys =>
    {
        var one = keys.Defaulted("one", Written.Weight, LiftLimits.Default.One, "One person.", "25 kg");
        var two = keys.Defaulted("two", Written.Weight, LiftLimits.Default.Two, "Two people.", "45 kg");
        var four = keys.Defaulted("four", Written.Weight, LiftLimits.Default.Four, "Four people.", "80 kg");
        return row => new LiftLimits(one(row), two(row), four(row));
    });
}
