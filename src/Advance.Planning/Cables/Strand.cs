using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>A straight piece of the network that leads lie along: an edge of the deck, or a piece of a named way.</summary>
/// <param name="Number">Which strand of its network.</param>
/// <param name="From">One end.</param>
/// <param name="To">The other.</param>
/// <param name="IsOnDeck">Whether it is up on the deck or down on the floor.</param>
/// <param name="Name">As a stagehand would say: <c>upstage edge</c>, or the way's own name.</param>
/// <param name="Way">The named way; null for an edge.</param>
/// <param name="Weight">What a metre of it counts when ways are compared; ordinary is 1.</param>
/// <param name="Twin">Of an edge, the strand on the other level; null for a way.</param>
internal sealed record Strand(int Number, Spot From, Spot To, bool IsOnDeck, string Name, CableWay? Way, double Weight, int? Twin)
{
    /// <summary>In metres.</summary>
    public double Length { get; } = From.To(To);

    /// <summary>The spot so many metres from the start.</summary>
    public Spot At(double offset)
    {
        var share = Length > 0 ? offset / Length : 0;
        return new(From.X + ((To.X - From.X) * share), From.Y + ((To.Y - From.Y) * share));
    }

    /// <summary>How many metres from the start the spot is that lies nearest to another; to the micrometre, so that equal ones are equal.</summary>
    public double Nearest(Spot spot)
    {
        if (Length == 0)
        {
            return 0;
        }

        var along = (((spot.X - From.X) * (To.X - From.X)) + ((spot.Y - From.Y) * (To.Y - From.Y))) / Length;
        return Math.Round(Math.Clamp(along, 0, Length), 6, MidpointRounding.AwayFromZero);
    }
}
