using Advance.Domain.Facts;

namespace Advance.Domain.Gigs;

/// <summary>The crew that has no names yet.</summary>
/// <param name="Hands">How many loaders and stagehands; null where not said.</param>
/// <param name="Meals">As written; null where not said.</param>
public sealed record Crew(Given<int>? Hands, Given<string>? Meals)
{
    /// <summary>Nothing said.</summary>
    public static readonly Crew None = new(null, null);
}
