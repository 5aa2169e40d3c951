using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>Who can be given work: people with a known call, and hands without names, who come with the first of them.</summary>
internal static class Workers
{
    /// <summary>In the order written, hands last.</summary>
    public static IReadOnlyList<Worker> Of(Gig gig)
    {
        var people = gig.People.Where(person => person.Call is { IsKnown: true })
            .Select(person => new Worker(person.Name, person.Skills, person.Call!.Value.Value)).ToList();
        if (people.Count > 0)
        {
            var first = people.Min(worker => worker.Call);
            people.AddRange(Enumerable.Range(1, gig.Crew.Hands?.Or(0) ?? 0).Select(number => new Worker($"hand {number}", [], first)));
        }

        return people;
    }

    /// <summary>How many are called in all; unknown where the number of hands is.</summary>
    public static Figure<int> Called(Gig gig)
    {
        int? hands = gig.Crew.Hands is { } given ? given.Is(out var known) ? known : null : 0;
        return new Figure<int>(gig.People.Count + hands, Domain.Facts.Doubts.Of(gig.Crew.Hands?.Doubt), Reason.Derived.It);
    }

    /// <summary>The open questions about who comes when.</summary>
    public static Doubts Doubts(Gig gig) =>
        gig.People.Aggregate(Domain.Facts.Doubts.Of(gig.Crew.Hands?.Doubt), (sum, person) => sum.With(Domain.Facts.Doubts.Of(person.Call?.Doubt)));
}
