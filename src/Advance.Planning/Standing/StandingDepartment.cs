using Advance.Domain;

namespace Advance.Planning;

/// <summary>Works out whether everything that stands keeps standing: in wind, and when people push.</summary>
public static class StandingDepartment
{
    /// <summary>Works it out.</summary>
    public static StandingPlan Settle(Brief brief, StagePlan stage, SoundPlan sound, LightingPlan lighting, IReadOnlyList<PlacedTruss> trusses, Ground ground)
    {
        var (gig, venue, company, stock) = brief;
        var site = StandingSite.Of(gig, venue);
        var builder = new StandingBuilder(site, gig, company.Policies, stock);
        IEnumerable<StandingItem?> items =
        [
            .. sound.Stacks.Select(stack => builder.Of(stack, sound.Pieces)),
            .. lighting.Positions.Select(position => builder.Of(position, lighting.Fixtures, lighting.Pieces, ground.On(position.Spot))),
            .. stage.Pieces.Where(piece => piece.Why is Need.AskedFor).Select(piece => builder.Of(piece, stage.Things.FirstOrDefault(thing => thing.Address == piece.Address), MarkOf(piece))),
        ];
        return new StandingPlan(site, [.. items.OfType<StandingItem>()], [.. new ClothWorking(brief, site).Of(trusses)]);
    }

    private static Domain.Facts.Mark MarkOf(Piece piece) => piece.Why is Need.AskedFor asked ? asked.At : Domain.Facts.Mark.Nowhere;
}
