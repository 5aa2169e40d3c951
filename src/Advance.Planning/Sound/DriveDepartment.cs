using Advance.Domain.Companies;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Links boxes, decides where they are crossed, and works out what is set on each.</summary>
public static class DriveDepartment
{
    /// <summary>Chooses links, settings and addresses.</summary>
    public static DrivePlan Choose(Gig gig, Company company, Stock stock, SoundPlan sound, Choices earlier)
    {
        _ = (gig, company, stock, sound, earlier);
        return new DrivePlan([], [], Choices.None);
    }
}
