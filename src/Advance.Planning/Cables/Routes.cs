using Advance.Domain.Gigs;
using UnitsNet;

namespace Advance.Planning;

/// <summary>The ways that cables may take, as a network of corners.</summary>
public sealed class Routes
{
    private readonly double climb;

    private Routes(double climb) => this.climb = climb;

    /// <summary>Surveys a gig: edges of its stages and its named ways.</summary>
    public static Routes Survey(Gig gig, Ground ground)
    {
        _ = (gig, ground);
        return new Routes(climb: 0);
    }

    /// <summary>How far it is along the ways from one spot to another, without slack or trims.</summary>
    public Length Path(Spot from, Spot to) => Length.FromMeters(Math.Abs(from.X - to.X) + Math.Abs(from.Y - to.Y) + climb);
}
