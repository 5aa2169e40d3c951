using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Tells which papers a gig asks for, from what is in it. The kinds of paper are common practice; the lead times are the company's.</summary>
public static class PapersDepartment
{
    /// <summary>The papers, those due first in front.</summary>
    public static IReadOnlyList<Paper> Settle(Plan plan) =>
        [.. new[] { ToVenue(plan), Power(plan), FromOthers(plan) }.SelectMany(papers => papers).OrderByDescending(paper => paper.Days)];

    private static IEnumerable<Paper> ToVenue(Plan plan)
    {
        var (gig, venue, company, _) = plan.Brief;
        var times = company.Policies.LeadTimes;
        var to = venue.Name.Length > 0 ? venue.Name : "the venue";
        yield return Of(plan, "Public liability insurance certificate", company.Name, to, "we work on their premises", times.Documents, "documents");
        yield return Of(plan, "Risk assessment and way of working", company.Name, to, Works(plan), times.Documents, "documents");
        if (venue.RoofPoints.Or([]).Count > 0)
        {
            yield return Of(plan, "Loads on roof points", company.Name, to, "points in the roof", times.Loads, "loads");
        }

        if (gig.Stages.Count > 0)
        {
            yield return Of(plan, "Stage plot, with exits kept clear", company.Name, to, gig.Stages.Count == 1 ? "a stage" : $"{gig.Stages.Count} stages", times.Patch, "patch");
        }

        if (gig.People.Count > 0 || gig.Crew.Hands is not null)
        {
            yield return Of(plan, "Names of the crew, and vehicles", company.Name, to, $"{gig.People.Count} by name, {gig.Trucks.Count} vehicles", times.Crew, "crew");
        }
    }

    private static IEnumerable<Paper> Power(Plan plan)
    {
        var (_, venue, company, _) = plan.Brief;
        var times = company.Policies.LeadTimes;
        var to = venue.Name.Length > 0 ? venue.Name : "the venue";
        if (venue.Services.Count > 0)
        {
            var services = $"{(venue.Services.Count == 1 ? "service" : "services")} {string.Join(", ", venue.Services.Select(service => service.Name))}";
            yield return Of(plan, $"Supply request, {services}", company.Name, to, "we draw from it", times.Power, "power");
            yield return Of(plan, $"Test report of {services}: earthing, loop impedance, residual protection", to, company.Name, "we plug into it", times.Power, "power");
        }

        if (plan.Pieces.Any(piece => piece.IsPulled && piece.Kind is { Mains: not null } or { Role: Role.Distribution }))
        {
            yield return Of(plan, "Test records of our electrical gear, in date", company.Name, to, "we bring mains gear", times.Documents, "documents");
        }
    }

    private static IEnumerable<Paper> FromOthers(Plan plan)
    {
        var (gig, venue, company, _) = plan.Brief;
        var times = company.Policies.LeadTimes;
        var to = venue.Name.Length > 0 ? venue.Name : "the venue";
        yield return Of(plan, "Fire plan: exits, muster, who gives the alarm", to, company.Name, "our crew and the public leave by it", times.Documents, "documents");
        foreach (var act in gig.Acts)
        {
            yield return Of(plan, "Act letter, read and sent back", act.Name, company.Name, "inputs, mixes, stage plot", times.Patch, "patch");
            if (act.Backline.Any(thing => thing.Draws is not null))
            {
                yield return Of(plan, "Test records of their own mains gear", act.Name, company.Name, "they plug into our mains", times.Documents, "documents");
            }
        }
    }

    private static string Works(Plan plan)
    {
        string[] works =
        [
            plan.Stage.Stages.Count > 0 ? "a stage is built" : "",
            plan.Sound.Stacks.Count > 0 ? "boxes are stacked" : "",
            plan.Sound.Hangs.Count > 0 ? "loudspeakers are flown" : "",
            plan.Lighting.Fixtures.Count > 0 ? "fixtures hang overhead" : "",
            plan.Power.Distributions.Count > 0 ? "temporary mains" : "",
        ];
        return string.Join(", ", works.Where(work => work.Length > 0).DefaultIfEmpty("crew on site"));
    }

    private static Paper Of(Plan plan, string what, string from, string to, string because, int days, string policy) =>
        new(what, from.Length > 0 ? from : "we", to.Length > 0 ? to : "us", because, days, policy, plan.ShowDate?.AddDays(-days));
}
