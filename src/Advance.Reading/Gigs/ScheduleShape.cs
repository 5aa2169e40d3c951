using Advance.Domain.Gigs;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>One line of the day.</summary>
internal static class ScheduleShape
{
    private const string Hold = "HOLD ";

    public static readonly RecordShape<ScheduleRow> It = new("schedule-line", "One line of the day.", keys =>
    {
        var time = keys.Asked("time", Written.Time, "When; +1 after midnight.");
        var what = keys.Needed("what", Written.Text, "What happens. HOLD before it: nothing goes on until somebody has signed.");
        var who = keys.Open("who", Written.Text, "Who does it, or who must sign.");
        var where = keys.Defaulted("where", Written.Text, "", "Where.", "not said");
        var day = keys.Optional("day", Written.Name, "Which day; without it the show day.");
        return row =>
        {
            var said = what(row);
            var isHold = said.StartsWith(Hold, StringComparison.Ordinal);
            return new ScheduleRow(day(row), time(row), isHold ? said[Hold.Length..].TrimStart() : said, who(row), where(row), isHold, row.At);
        };
    });
}
