using Advance.Domain.Companies;
using Advance.Reading.Shapes;

namespace Advance.Reading.Companies;

/// <summary>How early a company sends its papers.</summary>
internal static class LeadTimesShape
{
    public static readonly RecordShape<LeadTimes> It = new("lead-times", "How many days before the show papers must be there.", keys =>
    {
        var loads = keys.Number("loads", LeadTimes.Default.Loads, "Weights on a roof or a floor, days.");
        var power = keys.Number("power", LeadTimes.Default.Power, "What is asked of a supply, days.");
        var documents = keys.Number("documents", LeadTimes.Default.Documents, "Certificates and risk assessments, days.");
        var patch = keys.Number("patch", LeadTimes.Default.Patch, "Plots and input lists, days.");
        var crew = keys.Number("crew", LeadTimes.Default.Crew, "Names of those who come, days.");
        return row => new LeadTimes(loads(row), power(row), documents(row), patch(row), crew(row));
    });
}
