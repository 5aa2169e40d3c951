using Advance.Domain.Companies;
using Advance.Reading.Shapes;

namespace Advance.Reading.Companies;

/// <summary>How full a company loads its trucks.</summary>
internal static class LoadLimitsShape
{
    public static readonly RecordShape<LoadLimits> It = new("truck-limits", "How full a truck may be.", keys =>
    {
        var payload = keys.Defaulted("payload", Written.Percentage, LoadLimits.Default.Payload, "Of what it may carry.", "90 %");
        var floor = keys.Defaulted("floor", Written.Percentage, LoadLimits.Default.Floor, "Of the length of its floor.", "85 %");
        var strap = keys.Metres("strap-each", LoadLimits.Default.StrapEach, "How much of the length of a load one strap holds.");
        return row => new LoadLimits(payload(row), floor(row), strap(row));
    });
}
