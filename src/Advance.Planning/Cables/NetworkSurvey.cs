using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>Puts a network together from the edges of the deck and the named ways.</summary>
/// <param name="terrain">What they lie on.</param>
internal sealed class NetworkSurvey(Terrain terrain)
{
    private readonly List<Strand> strands = [];
    private readonly List<Tie> ties = [];

    /// <summary>The network of everything added.</summary>
    public Network Network => new(terrain, strands, ties);

    /// <summary>Adds the four edges, each on the deck and on the floor beside it.</summary>
    public void AddEdges()
    {
        if (terrain.Deck is not { } deck)
        {
            return;
        }

        Spot right = new(deck.Left, deck.Front), left = new(deck.Right, deck.Front), upRight = new(deck.Left, deck.Back), upLeft = new(deck.Right, deck.Back);
        AddEdge(upRight, upLeft, "upstage edge", 1);
        AddEdge(right, upRight, "SR edge", 1);
        AddEdge(left, upLeft, "SL edge", 1);
        AddEdge(right, left, "downstage edge", Terrain.PastTheAudience);
        JoinCorners();
    }

    /// <summary>Adds a named way. A corner that is nowhere leaves a gap.</summary>
    public void AddWay(CableWay way, IReadOnlyList<Spot?> corners)
    {
        var first = strands.Count;
        for (var index = 1; index < corners.Count; index++)
        {
            if (corners[index - 1] is { } from && corners[index] is { } to)
            {
                AddPieces(way, from, to);
            }
        }

        for (var number = first + 1; number < strands.Count; number++)
        {
            var (before, next) = (strands[number - 1], strands[number]);
            if (before.To == next.From)
            {
                ties.Add(new(new(number - 1, before.Length), new(number, 0), before.IsOnDeck == next.IsOnDeck ? 0 : terrain.Climb));
            }
        }
    }

    /// <summary>Joins ways to the edges and to each other wherever they come near.</summary>
    public void JoinWhatIsNear()
    {
        foreach (var strand in strands)
        {
            foreach (var other in strands.Where(other => other.IsOnDeck == strand.IsOnDeck && !AreJoined(strand, other)))
            {
                Join(strand, 0, other);
                Join(strand, strand.Length, other);
            }
        }
    }

    /// <summary>Joins each way that leads nowhere near the deck straight to it; the last thing to do.</summary>
    public void JoinWhatIsLeft()
    {
        if (terrain.Deck is not { } deck)
        {
            return;
        }

        while (strands.FirstOrDefault(strand => !strand.IsOnDeck && !Reached().Contains(strand.Number)) is { } lost)
        {
            var ends = strands.Where(strand => ReferenceEquals(strand.Way, lost.Way) && !strand.IsOnDeck).SelectMany(strand => new[] { (Strand: strand, Offset: 0.0), (Strand: strand, Offset: strand.Length) });
            var (strand, offset) = ends.MinBy(end => deck.Distance(end.Strand.At(end.Offset)));
            var edge = strands.Where(other => other is { Way: null, IsOnDeck: false }).MinBy(other => other.At(other.Nearest(strand.At(offset))).To(strand.At(offset)))!;
            Tie(strand, offset, edge);
        }
    }

    // Edges meet at corners, and the pieces of one way at its own.
    private static bool AreJoined(Strand one, Strand other) => ReferenceEquals(one.Way, other.Way);

    private void AddEdge(Spot from, Spot to, string name, double weight)
    {
        var number = strands.Count;
        strands.Add(new Strand(number, from, to, IsOnDeck: true, name, Way: null, weight, Twin: number + 1));
        strands.Add(new Strand(number + 1, from, to, IsOnDeck: false, name, Way: null, weight, Twin: number));
    }

    private void JoinCorners()
    {
        foreach (var one in strands)
        {
            foreach (var other in strands.Where(other => other.IsOnDeck == one.IsOnDeck && other.Number > one.Number))
            {
                foreach (var (a, b) in new[] { (one.From, other.From), (one.From, other.To), (one.To, other.From), (one.To, other.To) })
                {
                    if (a == b)
                    {
                        ties.Add(new(new(one.Number, one.Nearest(a)), new(other.Number, other.Nearest(b)), 0));
                    }
                }
            }
        }
    }

    // A way that leads over the edge of the deck is up on it for a part.
    private void AddPieces(CableWay way, Spot from, Spot to)
    {
        if (terrain.Deck?.Inside(from, to) is not { } inside || (inside.End - inside.Start) * from.To(to) < 0.001)
        {
            AddPiece(way, from, to, isOnDeck: false);
            return;
        }

        Spot On(double share) => share <= 0 ? from : share >= 1 ? to : new(from.X + ((to.X - from.X) * share), from.Y + ((to.Y - from.Y) * share));
        AddPiece(way, from, On(inside.Start), isOnDeck: false);
        AddPiece(way, On(inside.Start), On(inside.End), isOnDeck: true);
        AddPiece(way, On(inside.End), to, isOnDeck: false);
    }

    private void AddPiece(CableWay way, Spot from, Spot to, bool isOnDeck)
    {
        if (from != to)
        {
            strands.Add(new Strand(strands.Count, from, to, isOnDeck, way.Name, way, Terrain.OnNamedWay, Twin: null));
        }
    }

    private void Join(Strand strand, double offset, Strand other)
    {
        var spot = strand.At(offset);
        var meets = other.Nearest(spot);
        var there = other.At(meets);
        if (spot.To(there) <= terrain.Near && (strand.IsOnDeck || !terrain.IsUnderDeck(spot, there)))
        {
            Tie(strand, offset, other);
        }
    }

    private void Tie(Strand strand, double offset, Strand other)
    {
        var spot = strand.At(offset);
        var meets = other.Nearest(spot);
        var at = Math.Round(offset, 6, MidpointRounding.AwayFromZero);
        ties.Add(new(new(strand.Number, at), new(other.Number, meets), terrain.Straight(spot, other.At(meets), strand.IsOnDeck)));
    }

    // Every strand that a lead can get to from an edge.
    private HashSet<int> Reached()
    {
        var reached = strands.Where(strand => strand.Way is null).Select(strand => strand.Number).ToHashSet();
        for (var before = -1; before != reached.Count;)
        {
            before = reached.Count;
            foreach (var (one, other, _) in ties)
            {
                if (reached.Contains(one.Strand) || reached.Contains(other.Strand))
                {
                    reached.Add(one.Strand);
                    reached.Add(other.Strand);
                }
            }
        }

        return reached;
    }
}
