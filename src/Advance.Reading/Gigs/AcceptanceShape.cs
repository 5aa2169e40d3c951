using Advance.Domain.Findings;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>A finding that somebody took upon themselves; it lapses when its figures change.</summary>
internal static class AcceptanceShape
{
    public static readonly RecordShape<Acceptance> It = new("acceptance", "A finding that a named person takes upon themselves; it lapses when its figures change.", keys =>
    {
        var rule = keys.Needed("rule", Written.Name, "The rule, as the finding names it.");
        var where = keys.Needed("where", Written.Text, "The thing, as the finding names it.");
        var figures = keys.Needed("figures", Written.Text, "The figures that are accepted, as the finding prints them.");
        var by = keys.Needed("by", Written.Name, "Who accepts it.");
        var why = keys.Needed("why", Written.Text, "The reason.");
        return row => new Acceptance(rule(row), where(row), figures(row), by(row), why(row), row.At);
    });
}
