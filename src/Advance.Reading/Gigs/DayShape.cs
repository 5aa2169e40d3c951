using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>One day of the gig: its date, or its date and what it is for. A day is for what its name says, if that is one of the four.</summary>
internal static class DayShape
{
    private static readonly (string Word, DayKind Kind)[] Kinds =
        [("show", DayKind.Show), ("build", DayKind.Build), ("rehearsal", DayKind.Rehearsal), ("strike", DayKind.Strike)];

    private static readonly RecordShape<Day> Record = new("day", "One day of the gig.", keys =>
    {
        var date = keys.Asked("date", Written.Date, "The date with its weekday.");
        var kind = keys.Optional("kind", Written.OneOf("day-kind", "what a day is for", Kinds), "What the day is for; without it what its name says, or a show.");
        return row => new Day(row.Name, date(row), kind(row) ?? KindOf(row.Name));
    });

    public static readonly Shape<Day> It = new EitherShape<Day>(
        new TurnedShape<Given<WrittenDate>, Day>(new GivenShape<WrittenDate>(Written.Date), (date, reader) => new Day(reader.Name, date, KindOf(reader.Name))),
        Record);

    private static DayKind KindOf(string name) => Array.Find(Kinds, one => one.Word == name).Kind;
}
