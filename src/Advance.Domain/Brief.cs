using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Domain.Venues;

namespace Advance.Domain;

/// <summary>Everything that was written about one gig, as read: nothing is worked out yet.</summary>
/// <param name="Gig">The show itself.</param>
/// <param name="Venue">Where it is; an empty venue where the gig names none.</param>
/// <param name="Company">Whose name is on the paper; the shipped defaults where the gig names none.</param>
/// <param name="Stock">What the shop owns; empty where the gig names none.</param>
public sealed record Brief(Gig Gig, Venue Venue, Company Company, Stock Stock)
{
    /// <summary>Every value that was written with TBC in the gig, its venue and its company, in the order of the files.</summary>
    public IReadOnlyList<Doubt> OpenQuestions { get; init; } = [];
}
