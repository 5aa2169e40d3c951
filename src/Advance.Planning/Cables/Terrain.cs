namespace Advance.Planning;

/// <summary>What leads lie on and keep away from, and what a straight piece counts when ways are compared: metres, and more where it is in the way.</summary>
/// <param name="Deck">The outline of the deck; null where there is none, or its size is unknown.</param>
/// <param name="Keep">What the venue keeps clear.</param>
/// <param name="Near">How far leads are laid straight, in metres.</param>
/// <param name="Climb">What the edge of the deck counts.</param>
internal sealed record Terrain(Area? Deck, IReadOnlyList<NoGo> Keep, double Near, double Climb)
{
    // Common practice: leads keep to the edges of the deck, round the back sooner than past the audience, and to the ways that were named.
    // The first metre from an edge is in nobody's way.
    private const double AcrossTheDeck = 3;
    private const double BesideTheEdge = 1;
    private const double AcrossTheFloor = 1.5;

    /// <summary>For each metre of the downstage edge.</summary>
    public const double PastTheAudience = 1.05;

    /// <summary>For each metre of a named way.</summary>
    public const double OnNamedWay = 0.9;

    /// <summary>What a straight piece counts at most for each metre, unless it lies across what is kept clear.</summary>
    public const double MostForStraight = AcrossTheDeck;

    // More than any way is long: a lead goes a long way round before it lies across an exit.
    private const double Forbidden = 100_000;

    /// <summary>Whether a spot is up on the deck.</summary>
    public bool IsOnDeck(Spot spot) => Deck is { } deck && deck.Holds(spot);

    /// <summary>How far a spot is from the deck, in metres; 0 on it, and without end where there is none.</summary>
    public double FromDeck(Spot spot) => Deck is { } deck ? deck.Distance(spot) : double.PositiveInfinity;

    /// <summary>Whether a straight line on the floor would lead under the deck.</summary>
    public bool IsUnderDeck(Spot from, Spot to) => Deck is { } deck && deck.IsCrossedBy(from, to);

    /// <summary>What a straight piece beside all ways counts.</summary>
    public double Straight(Spot from, Spot to, bool isOnDeck)
    {
        var far = from.To(to);
        return isOnDeck ? Math.Min(far, BesideTheEdge) + (Math.Max(0, far - BesideTheEdge) * AcrossTheDeck) : (far * AcrossTheFloor) + Trespass(from, to);
    }

    /// <summary>What a piece of a strand counts. Where a named way leads across what is kept clear, somebody has thought of it.</summary>
    public double Along(Strand strand, Spot from, Spot to) =>
        (from.To(to) * strand.Weight) + (strand.IsOnDeck || strand.Way is not null ? 0 : Trespass(from, to));

    private double Trespass(Spot from, Spot to) => Keep.Count(area => area.IsCrossedBy(from, to)) * Forbidden;
}
