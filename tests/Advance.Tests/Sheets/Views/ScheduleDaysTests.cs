using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Planning;
using Advance.Sheets.Views;
using Advance.Tests.Planning;

namespace Advance.Tests.Sheets.Views;

/// <summary>A line of another day is never read as one of the show day.</summary>
public sealed class ScheduleDaysTests
{
    [Fact]
    public void Each_line_stands_under_its_own_day_and_none_is_lost()
    {
        var sheet = DaySheetViews.Of(Festival(), [], showsPrivate: true);
        Assert.Equal(["Doors", "Wind check", "Lost day"], sheet.Schedule.Select(line => line.What.Text));
        Assert.Equal(["build", "clear"], sheet.OtherDays.Select(day => day.Name.Split(", ")[^1]));
        Assert.Equal(["Roof up", "Site clear"], sheet.OtherDays.SelectMany(day => day.Lines).Select(line => line.What.Text));
    }

    [Fact]
    public void An_act_is_told_of_the_show_day_only()
    {
        var letter = ActLetterViews.Of(Festival())!.Acts.Single();
        Assert.Equal(["Lost day", "Doors", "Wind check"], letter.Times.Select(time => time.What.Text));
    }

    private static Plan Festival()
    {
        var gig = Gigs.Gig(Gigs.Act("Band"));
        var show = gig.Days[0];
        return Planner.Plan(Gigs.Brief(gig with
        {
            Days = [new Day("build", show.Date, DayKind.Build), show, new Day("clear", show.Date, DayKind.Strike)],
            Schedule =
            [
                Row("build", 8, "Roof up"), Row(null, 14, "Doors", "Band"), Row(show.Name, 15, "Wind check"), Row("clear", 12, "Site clear"), Row("other", 9, "Lost day"),
            ],
        }));
    }

    private static ScheduleRow Row(string? day, int hour, string what, string who = "all") =>
        new(day, Given.Of(Moment.At(hour, 0), Gigs.Here), what, Given.Of(who, Gigs.Here), "", false, Gigs.Here);
}
