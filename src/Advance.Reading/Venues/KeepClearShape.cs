using Advance.Domain.Venues;
using Advance.Reading.Shapes;

namespace Advance.Reading.Venues;

/// <summary>Something that nothing may stand in.</summary>
internal static class KeepClearShape
{
    public static readonly RecordShape<KeepClear> It = new("keep-clear", "An exit, hydrant or lane that nothing may stand in.", keys =>
    {
        var what = keys.Needed("what", Written.Text, "Its name.");
        var place = keys.Asked("place", Written.Place, "Where, measured from the venue's datum.");
        var wide = keys.Open("wide", Written.Length, "How wide it must stay.");
        var why = keys.Defaulted("why", Written.Text, "", "What it is for.", "not said");
        return row => new KeepClear(what(row), place(row), wide(row), why(row), row.At);
    });
}
