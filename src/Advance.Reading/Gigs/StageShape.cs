using Advance.Domain.Gigs;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>One playing area.</summary>
internal static class StageShape
{
    public static readonly RecordShape<Stage> It = new("stage", "One playing area.", keys =>
    {
        var size = keys.Asked("size", Written.Size, "Width across, and depth.");
        var height = keys.Asked("height", Written.Height, "Of the top of the deck.");
        var downstageEdge = keys.Open("downstage-edge", Written.Place, "Where the middle of the downstage edge stands, measured from the venue's datum or from a line that the words of the datum name; without it that is the datum.");
        var decks = keys.Optional("decks", Written.Counted, "What it is built from; left out where it is built in.");
        var steps = keys.Optional("steps", ThingShape.It, "How people get up.");
        var rails = keys.Open("rails", Written.As(Edges.Of), "The edges that have a rail; or none.");
        var walls = keys.Open("against-wall", Written.As(Edges.Of), "The edges that stand against a wall.");
        var audience = keys.Open("audience-edges", Written.As(Edges.Of), "The edges that the audience looks over; without it the front.");
        var things = keys.Any("things", Written.TableOfThings(ThingShape.It, "name"), "What stands on it for the whole gig.");
        var deckRating = keys.Open("deck-rating", Written.As(Quantities.AreaLoad), "What the deck carries, spread.");
        var legRating = keys.Open("leg-rating", Written.As(Quantities.Load), "What the deck carries in one place, such as a foot or a leg of what stands on it.");
        var friction = keys.Open("friction", Written.Factor, "Between the deck and what stands on it, wet where it gets wet.");
        return row => new Stage(
            row.Name, size(row), height(row), downstageEdge(row), decks(row), steps(row), rails(row), things(row), row.At)
        {
            AgainstWall = walls(row),
            AudienceEdges = audience(row),
            DeckRating = deckRating(row),
            LegRating = legRating(row),
            Friction = friction(row),
        };
    });
}
