using Advance.Domain.Gigs;
using UnitsNet;

namespace Advance.Planning;

/// <summary>A straight piece of a route.</summary>
/// <param name="From">Where it starts.</param>
/// <param name="To">Where it ends.</param>
/// <param name="IsOnDeck">Whether it lies on the deck or on the floor.</param>
/// <param name="Along">What it lies along; empty where it goes straight across.</param>
/// <param name="Way">The named way that it lies along; null for all else.</param>
/// <param name="IsEstimated">Whether nobody named a way there: it is a straight line over more than leads are usually laid straight.</param>
public sealed record Leg(Spot From, Spot To, bool IsOnDeck, string Along, CableWay? Way, bool IsEstimated)
{
    /// <summary>To the next centimetre, so that the sum of what is printed is what is printed.</summary>
    public Length Length => Length.FromCentimeters(Math.Ceiling((From.To(To) * 100) - 1e-6));

    /// <summary>Whether the next one only goes on with it.</summary>
    internal bool GoesOnIn(Leg next) =>
        next.IsOnDeck == IsOnDeck && next.Along == Along && ReferenceEquals(next.Way, Way) && next.IsEstimated == IsEstimated && IsStraightTo(next);

    // Twice the area of the triangle: nothing where all three spots lie in a line; forwards where they follow each other.
    private bool IsStraightTo(Leg next)
    {
        var (x, y) = (To.X - From.X, To.Y - From.Y);
        var (u, v) = (next.To.X - next.From.X, next.To.Y - next.From.Y);
        return Math.Abs((x * v) - (y * u)) < 1e-9 && (x * u) + (y * v) > 0;
    }
}
