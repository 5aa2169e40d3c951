using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using UnitsNet;

namespace Advance.Planning;

/// <summary>How much lead the edge of a deck takes.</summary>
internal static class DeckClimb
{
    /// <summary>By policy, or the height of the deck where that is more; nothing where the stage is no higher than the floor. Never unknown.</summary>
    public static Figure<Length> Of(Stage? stage, CablePolicies policies)
    {
        var policy = Figure.Policy("cables / climb", policies.Climb);
        if (stage is null)
        {
            return policy;
        }

        // A deck of unknown height takes what the policy says, and that stays an open question.
        if (!stage.Height.Is(out var height) || height.Above is not (null or HeightFrom.Floor))
        {
            return policy with { RestsOn = Doubts.Of(stage.Height.Doubt) };
        }

        return height.Height <= Length.Zero
            ? Figure.From(stage.Height.Select(level => level.Height))
            : Sum.Of("climb", "c = max(k, h)", Publication.CommonPractice)
                .Put("k", policy)
                .Put("h", Figure.From(stage.Height.Select(level => level.Height)))
                .Gives((least, high) => least > high ? least : high);
    }
}
