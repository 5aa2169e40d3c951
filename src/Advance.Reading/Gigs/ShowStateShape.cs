using Advance.Domain.Gigs;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>When a show state is.</summary>
internal static class ShowStateShape
{
    private static readonly Shape<ShowState> States = Written.OneOf(
        "show-state",
        "a show state",
        ("build", ShowState.Build),
        ("sound check", ShowState.SoundCheck),
        ("show", ShowState.Show),
        ("changeover", ShowState.Changeover),
        ("night", ShowState.Night));

    public static readonly RecordShape<ShowStateRow> It = new("show-state-time", "When a show state is; a state may have several rows.", keys =>
    {
        var state = keys.Needed("state", States, "What is going on.");
        var time = keys.Asked("time", Written.TimeRange, "From when to when.");
        return row => new ShowStateRow(state(row), time(row), row.At);
    });
}
