using Advance.Domain.Companies;
using Advance.Planning;
using Advance.Reading;
using Advance.Reading.Files;

namespace Advance.Tests.Planning;

/// <summary>Which papers a gig asks for, and when: lead times are the company's, common practice, no source.</summary>
public sealed class PapersTests
{
    private static readonly Lazy<Plan> Planned = new(() =>
        Planner.Plan(BriefReader.Read(new FolderDoor(Repository.Path("sample-gigs")), "harvest-supper/gig.yaml").Brief!));

    private static Plan Supper => Planned.Value;

    // The supper is on 12 September: fourteen days before is 29 August, seven are 5 September.
    [Fact]
    public void A_paper_is_due_so_many_days_before_the_show()
    {
        var papers = PapersDepartment.Settle(Supper);
        Assert.Equal(new DateOnly(2026, 8, 29), papers.First(paper => paper.Policy == "documents").DueBy);
        Assert.Equal(new DateOnly(2026, 9, 5), papers.First(paper => paper.Policy == "crew").DueBy);
        Assert.Equal(papers.OrderBy(paper => paper.DueBy).Select(paper => paper.DueBy), papers.Select(paper => paper.DueBy));
    }

    [Fact]
    public void The_company_sets_the_days()
    {
        var company = Supper.Brief.Company;
        var brief = Supper.Brief with { Company = company with { Policies = company.Policies with { LeadTimes = LeadTimes.Default with { Power = 30 } } } };
        Assert.Equal(new DateOnly(2026, 8, 13), PapersDepartment.Settle(Supper with { Brief = brief }).First(paper => paper.Policy == "power").DueBy);
    }

    [Fact]
    public void A_gig_without_a_roof_asks_for_no_loads_on_it() => Assert.DoesNotContain(PapersDepartment.Settle(Supper), paper => paper.Policy == "loads");
}
