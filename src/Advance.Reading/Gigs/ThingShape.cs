using Advance.Domain.Gigs;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>Something that stands somewhere under a name of its own.</summary>
internal static class ThingShape
{
    public static readonly RecordShape<Thing> It = new("thing", "Something that stands somewhere: backline, a riser, a table.", keys =>
    {
        var item = keys.Optional("item", Written.Name, "Its kind in the stock; without one it is only drawn.");
        var place = keys.Asked("place", Written.Place, "Where its centre is.");
        var size = keys.Open("size", Written.Size, "Across and deep; without it as its item.");
        var from = keys.Open("from", Written.Owner, "Whose it is; without it as the section says.");
        var draws = keys.Open("draws", Written.Current, "What it draws from the mains, as on its plate; 0 A for what needs none.");
        var note = keys.Defaulted("note", Written.Text, "", "Anything else.", "nothing");
        return row => new Thing(row.Name, item(row), place(row), size(row), from(row), draws(row), note(row), row.At);
    });
}
