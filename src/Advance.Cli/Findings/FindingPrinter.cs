using Advance.Cli.Commands;
using Advance.Domain.Wording;

namespace Advance.Cli.Findings;

/// <summary>Chooses how findings are printed.</summary>
internal static class FindingPrinter
{
    /// <summary>All findings of a gig, in the form asked for; text that ends in a line end.</summary>
    public static string Print(Planned planned, string form)
    {
        var speech = Speech.Of(planned.Plan?.Brief.Company.Units ?? UnitSystem.Metric);
        return form switch
        {
            "json" => JsonFindings.Print(planned.Findings, speech),
            "short" => ShortFindings.Print(planned.Findings, speech),
            _ => FullFindings.Print(planned.Findings, planned.Sources, speech),
        };
    }
}
