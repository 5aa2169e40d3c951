using Advance.Domain.Gigs;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>The crew that has no names yet.</summary>
internal static class CrewShape
{
    public static readonly RecordShape<Crew> It = new("crew", "The crew that has no names yet.", keys =>
    {
        var hands = keys.Open("hands", Written.Count, "How many loaders and stagehands.");
        var meals = keys.Open("meals", Written.Text, "What they eat, and when.");
        return row => new Crew(hands(row), meals(row));
    });
}
