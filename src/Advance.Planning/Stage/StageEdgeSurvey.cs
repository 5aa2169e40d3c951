using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Says what is along each edge of a stage.</summary>
internal static class StageEdgeSurvey
{
    // Steps that stand further off lead up over no edge.
    private const double StepsReach = 0.3;

    /// <summary>The four edges of a stage, in the order in which edges are listed.</summary>
    public static IEnumerable<StageEdge> Of(Stage stage, Address address, Stock stock, Ground ground)
    {
        var height = Ground.HeightOf(stage.Height);
        foreach (var (word, edge) in StageEdgeWords.All)
        {
            var (state, given) = StateOf(stage, edge);
            yield return new StageEdge(
                address / $"{word} edge",
                stage,
                edge,
                $"{word} edge",
                state,
                height,
                [.. StepsOver(stage, edge, stock, ground)],
                Doubts.Of(given?.Doubt),
                given?.At ?? stage.At)
            {
                Together = address / "edges",
            };
        }
    }

    /// <summary>The edge that steps lead up over; null where they stand off every edge, or nobody knows.</summary>
    /// <param name="spot">Their middle.</param>
    /// <param name="covers">Before they are turned; only how deep they are matters.</param>
    /// <param name="outline">Of the deck.</param>
    public static StageEdges? EdgeOf(Spot? spot, Footprint covers, Outline? outline)
    {
        if (spot is not { } at || outline is not { } deck)
        {
            return null;
        }

        var (edge, beyond) = deck.Nearest(at);
        return Math.Abs(beyond - (covers.Depth / 2)) <= StepsReach ? edge : null;
    }

    private static IEnumerable<string> StepsOver(Stage stage, StageEdges edge, Stock stock, Ground ground)
    {
        if (stage.Steps is not { } steps)
        {
            return [];
        }

        var covers = Footprint.Of(steps.Item is { } item ? stock.Find(item) : null, steps.Size);
        return EdgeOf(ground.Find(steps.Place), covers, ground.Outline) == edge ? [steps.Name] : [];
    }

    // A rail or a wall at the front is there all the same, for who looks over it looks through the rail.
    private static (EdgeState State, Given<StageEdges>? Given) StateOf(Stage stage, StageEdges edge)
    {
        if (Has(stage.AgainstWall, edge))
        {
            return (EdgeState.Wall, stage.AgainstWall);
        }

        if (Has(stage.Railed, edge))
        {
            return (EdgeState.Railed, stage.Railed);
        }

        if (stage.AudienceEdges is { } audience ? Has(audience, edge) : edge == StageEdges.Front)
        {
            return (EdgeState.Audience, stage.AudienceEdges);
        }

        return (stage.Railed is { IsKnown: true } ? EdgeState.Open : EdgeState.NotSaid, stage.Railed);
    }

    private static bool Has(Given<StageEdges>? edges, StageEdges edge) => edges is { } given && given.Is(out var known) && known.HasFlag(edge);
}
