using Advance.Domain.Gigs;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>Who plays.</summary>
internal static class ActShape
{
    public static readonly RecordShape<Act> It = new("act", "Who plays.", keys =>
    {
        var people = keys.Asked("people", Written.Count, "How many on stage.");
        var sets = keys.Any("sets", Written.ListOfGiven(Written.SetTime), "When it plays, and how long.");
        var brings = keys.Any("brings", Written.List(Written.Counted), "What it brings, in its own words.");
        var backline = keys.Any("backline", Written.TableOfThings(ThingShape.It, "name"), "What of it stands on the stage.");
        var inputs = keys.Any("inputs", Written.Table(InputShape.It), "What goes to the desks.");
        var mixes = keys.Any("mixes", Written.Table(MixShape.It), "What comes back.");
        return row => new Act(row.Name, people(row), sets(row), brings(row), backline(row), inputs(row), mixes(row), row.At);
    });
}
