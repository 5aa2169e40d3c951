using Advance.Domain.Gigs;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>What holds a hang, and how it is turned.</summary>
internal static class HangShape
{
    private static readonly RecordShape<HangPick> Pick = new("hang-pick", "Where the frame of a hang is held.", keys =>
    {
        var hole = keys.Open("hole", Written.Name, "The maker's name for the hole of the frame; without it the one that comes nearest to the tilt.");
        var hoist = keys.Open("hoist", Written.Name, "The kind of hoist; left out where it hangs dead.");
        var points = keys.Asked("points", Written.ListOfGiven(Written.Name), "The venue's point, a bridle or a truss; of a pair one for each side, in the order of the sides.");
        var gear = keys.Any("gear", Written.List(Written.Counted), "What is between frame and point besides the hoist: slings, steels, shackles.");
        var bodyUp = keys.Defaulted("body", Written.OneOf("body", "where a hoist's body is", ("up", true), ("down", false)), false, "Whether the hoist's body hangs at the point or at the frame.", "down");
        var group = keys.Defaulted("group", Written.Name, "", "What it is controlled with; where that is a distribution, it feeds the hoist.", "not said");
        return row => new HangPick(hole(row), hoist(row), points(row), gear(row), row.At) { BodyUp = bodyUp(row), Group = group(row) };
    });

    private static readonly RecordShape<PullBack> Pulled = new("pull-back", "A line from the lower back edge of the lowest box that pulls a hang back.", keys =>
    {
        var pull = keys.Asked("pull", Written.As(Quantities.Load), "In the line.");
        var up = keys.Asked("up", Written.Angle, "How steeply it goes up from level, towards the rear.");
        var to = keys.Needed("to", Written.Text, "What it goes to, in words.");
        return row => new PullBack(pull(row), up(row), to(row), row.At);
    });

    /// <summary>Declares them among the keys of a hang.</summary>
    public static Func<Row, Flown> Keys(Keys keys)
    {
        var splays = keys.Asked("splays", Written.ListOfGiven(Written.Angle), "How much further down each box looks than what it hangs on, one angle for each box from the top; the first to the frame.");
        var tilt = keys.Open("tilt", Written.Tilt, "Of its frame; left out where it follows from the one hole that it hangs by.");
        var trim = keys.Open("trim", Written.Height, "Of its lowest edge.");
        var pickTrim = keys.Open("pick-trim", Written.Height, "Of the hole that it hangs by, of two the front one.");
        keys.AtMostOneOf("trim", "pick-trim");
        var picks = keys.Any("picks", Written.Table(Pick), "Where its frame is held: one pick, or two one behind the other.");
        var below = keys.Open("people-below", Written.OneOf("people-below", "who is below", ("never", PeopleBelow.Never), ("at rest", PeopleBelow.AtRest), ("moving", PeopleBelow.Moving)), "Who is below it, and when; without it people are, at rest.");
        var secondary = keys.Open("secondary", Written.Text, "What holds it when a hoist, its frame or a sling lets go: steels, how many, where to.");
        var pullBack = keys.Optional("pull-back", Pulled, "What pulls its foot back.");
        var above = keys.Open("stays-above", Written.Height, "How low its lowest edge may come, for a sight line, a screen or what passes below.");
        return row => new Flown(splays(row), picks(row))
        {
            Tilt = tilt(row),
            Trim = trim(row),
            PickTrim = pickTrim(row),
            Below = below(row),
            Secondary = secondary(row),
            PullBack = pullBack(row),
            StaysAbove = above(row),
        };
    }
}
