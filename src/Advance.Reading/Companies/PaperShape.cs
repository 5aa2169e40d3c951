using Advance.Domain.Companies;
using Advance.Domain.Wording;
using Advance.Reading.Shapes;

namespace Advance.Reading.Companies;

/// <summary>What the company prints on, and in which units.</summary>
internal static class PaperShape
{
    public static readonly RecordShape<(PaperSize Size, UnitSystem Units)> It = new("paper", "What the company prints on, and in which units.", keys =>
    {
        var size = keys.Defaulted("size", Written.OneOf("paper-size", "a paper size", ("A4", PaperSize.A4), ("Letter", PaperSize.Letter)), PaperSize.A4, "The sheet.", "A4");
        var units = keys.Defaulted("units", Written.OneOf("units", "a system of units", ("metric", UnitSystem.Metric), ("US", UnitSystem.UsCustomary)), UnitSystem.Metric, "The units that the paper speaks; the files may mix them.", "metric");
        return row => (size(row), units(row));
    });
}
