using Advance.Domain.Companies;
using Advance.Reading.Shapes;

namespace Advance.Reading.Companies;

/// <summary>When people of a company eat.</summary>
internal static class MealBreaksShape
{
    public static readonly RecordShape<MealBreaks> It = new("breaks", "When people who work must eat.", keys =>
    {
        var by = keys.Defaulted("meal-by", Written.Duration, MealBreaks.Default.By, "Longest time without.", "5 h");
        var meal = keys.Defaulted("meal", Written.Duration, MealBreaks.Default.For, "How long a meal takes.", "30 min");
        return row => new MealBreaks(by(row), meal(row));
    });
}
