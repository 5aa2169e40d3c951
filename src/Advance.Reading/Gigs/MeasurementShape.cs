using Advance.Domain.Gigs;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>A reading from the site.</summary>
internal static class MeasurementShape
{
    public static readonly RecordShape<Measurement> It = new("measurement", "A reading from the site, to stand beside what was worked out.", keys =>
    {
        var where = keys.Needed("where", Written.Text, "Address of the figure that it belongs to.");
        var value = keys.Needed("value", Written.Text, "As read: with its unit, or a version of software.");
        var by = keys.Defaulted("by", Written.Text, "", "Who read it.", "not said");
        var time = keys.Defaulted("time", Written.Text, "", "When.", "not said");
        return row => new Measurement(where(row), value(row), Readings.Of(value(row)), by(row), time(row), row.At);
    });
}
