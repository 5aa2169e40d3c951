using System.Text;
using Advance.Domain.Wording;
using Advance.Sheets;

namespace Advance.Golden;

/// <summary>Each sample gig, whole: one accepted file a room, so that a changed line names the room that moved.</summary>
public sealed class SampleTests
{
    public static TheoryData<string> Gigs => Samples.Gigs;

    [Theory]
    [MemberData(nameof(Gigs))]
    public void Reading_and_rules_find_what_they_found(string gig)
    {
        var findings = Samples.Read(gig).Findings.Concat(Samples.Plan(gig).Findings);
        var text = string.Concat(findings.Select(finding => $"{finding.At}: {finding.Severity} {finding.Rule}: {Speech.Metric.Say(finding.Says)}\n"));
        Golden.Matches(gig, "findings.txt", text);
    }

    [Theory]
    [MemberData(nameof(Gigs))]
    public void Planning_plans_what_it_planned(string gig) => Golden.Matches(gig, "plan.txt", PlanText.Of(Samples.Plan(gig)));

    [Theory]
    [MemberData(nameof(Gigs))]
    public void Views_show_what_they_showed(string gig) => Golden.Matches(gig, "views.json", Encoding.UTF8.GetString(File(gig, "json")));

    [Theory]
    [MemberData(nameof(Gigs))]
    public void Pages_say_what_they_said_where_they_said_it(string gig) => Golden.Matches(gig, "pages.txt", PageText.Of(File(gig, "pdf")));

    private static byte[] File(string gig, string format)
    {
        var package = PackageBuilder.Build(Samples.Plan(gig), PackageRequest.Everything with { Formats = [format] }, CompanyFolder.None);

        // A stage with many things has labels that stand in a key under it: that is told, and no mistake.
        Assert.DoesNotContain(package.Faults, fault => !fault.Contains("listed under", StringComparison.Ordinal));
        return Assert.Single(package.Files).Bytes.ToArray();
    }
}
