using Advance.Domain.Companies;
using Advance.Reading.Shapes;

namespace Advance.Reading.Companies;

/// <summary>How long a company keeps what it hires.</summary>
internal static class HireDaysShape
{
    public static readonly RecordShape<HireDays> It = new("hire-days", "How long hired things are kept beside the days of the gig.", keys =>
    {
        var before = keys.Number("before", HireDays.Default.Before, "Days that they come in before the first.");
        var after = keys.Number("after", HireDays.Default.After, "Days that they go back after the last.");
        return row => new HireDays(before(row), after(row));
    });
}
