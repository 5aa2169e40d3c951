using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Domain.Venues;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>The wind and the ground that things stand in and on.</summary>
/// <param name="IsOpenAir">Whether wind gets at them; null where nobody says anything of wind or weather.</param>
/// <param name="Wind">As the gig says, and where it does not, the venue; null where neither does.</param>
/// <param name="Gust">The gust up to which everything stands as it is; unknown where nobody says.</param>
/// <param name="Ground">Of the site; null where nobody says.</param>
/// <param name="At">Where a question about wind belongs.</param>
public sealed record StandingSite(bool? IsOpenAir, Wind? Wind, Figure<Speed> Gust, SiteGround? Ground, Mark At)
{
    private const string Root = "site";

    /// <summary>Its name in the plan.</summary>
    public static Address Address => Address.Of(Root);

    /// <summary>What the wind comes over, and whether nobody said so.</summary>
    public (Domain.Venues.Terrain Over, bool IsAssumed) Terrain => Wind?.Terrain is { IsKnown: true } said ? (said.Value, false) : (Domain.Venues.Terrain.Open, true);

    /// <summary>Reads it from gig and venue.</summary>
    public static StandingSite Of(Gig gig, Venue venue)
    {
        var wind = gig.Wind is { } own ? own.Over(venue.Wind) : venue.Wind;
        var at = wind?.At ?? gig.At;
        var gust = wind?.Gust is { } said
            ? Figure.From(said)
            : new Figure<Speed>(null, Doubts.Of(new Doubt("wind / gust", at, LeftOut: true)), Reason.Derived.It);
        return new StandingSite(IsOpen(venue, wind), wind, gust, venue.Ground, at);
    }

    /// <summary>The gust at the top of a thing: as stated, or stronger where it is higher than that.</summary>
    public Figure<Speed> GustAt(Figure<Length> top)
    {
        if (Wind?.Height is not { IsKnown: true } height || top.Value is not { } high || high <= height.Value)
        {
            return Gust;
        }

        var factor = GustProfile.Gust(high, Terrain.Over) / GustProfile.Gust(height.Value, Terrain.Over);
        return Sum.Of("gust at its top", "v = k · V", En1991.Profile)
            .Put("k", new Figure<double>(factor, top.RestsOn.With(Doubts.Of(height.Doubt)), Reason.Derived.It))
            .Put("V", Gust)
            .Gives((higher, stated) => stated * higher);
    }

    /// <summary>The mean over ten minutes at 10 m in open country, as forecasts tell it, in which a gust is to be reckoned with.</summary>
    public Figure<Speed> Forecast(Figure<Speed> gust, Figure<Length> height) =>
        Sum.Of("mean of a forecast", "v = V / k", En1991.Profile)
            .Put("V", gust)
            .Put("k", new Figure<double>(height.Value is { Meters: > 0 } high ? GustProfile.Gust(high, Terrain.Over) : null, height.RestsOn, Reason.Derived.It))
            .Gives((fast, factor) => fast / factor);

    /// <summary>How much the ground falls some way: as a figure, on the stage none.</summary>
    /// <param name="on">What the thing stands on.</param>
    /// <param name="x">Towards stage left; with <paramref name="y"/> of length 1.</param>
    /// <param name="y">Upstage.</param>
    public Figure<Angle> SlopeTowards(Footing on, double x, double y)
    {
        if (on == Footing.Deck || IsOpenAir != true)
        {
            return new Figure<Angle>(Angle.Zero, Doubts.None, Reason.Derived.It);
        }

        if (Ground?.Slope is not { IsKnown: true } slope)
        {
            var doubt = Ground?.Slope.Doubt ?? new Doubt("ground / slope", At, LeftOut: true);
            return new Figure<Angle>(Angle.Zero, Doubts.Of(doubt), Reason.Derived.It);
        }

        return Sum.Of("slope towards an edge", "s = atan(tan(S) · c)", RigidBodies.Balance)
            .Put("S", Figure.From(slope))
            .Put("c", new Figure<double>(Math.Max(0, Along(x, y)), Doubts.Of(Ground.Falls?.Doubt), Reason.Derived.It))
            .Gives((falls, along) => Angle.FromDegrees(180 / Math.PI * Math.Atan(Math.Tan(falls.Radians) * along)));
    }

    /// <summary>Friction under a thing, and whether it is only the company's figure.</summary>
    public (Figure<double> Friction, bool IsAssumed) FrictionUnder(Footing on, Stage? stage, Given<double>? own, StandingPolicies policies)
    {
        var said = own ?? (on == Footing.Deck ? stage?.Friction : IsOpenAir == true ? Ground?.Friction : null);
        return said is { IsKnown: true } known
            ? (Figure.From(known), false)
            : (Figure.Policy("standing / friction", policies.Friction) with { RestsOn = Doubts.Of(said?.Doubt) }, true);
    }

    // Where nobody says which way it falls, it falls the worst way.
    private double Along(double x, double y) => Ground?.Falls is { IsKnown: true } falls
        ? falls.Value switch
        {
            StageEdges.StageLeft => x,
            StageEdges.StageRight => -x,
            StageEdges.Rear => y,
            StageEdges.Front => -y,
            _ => 1,
        }
        : 1;

    private static bool? IsOpen(Venue venue, Wind? wind)
    {
        if (venue.Hall.IsOpenAir is { IsKnown: true } said)
        {
            return said.Value;
        }

        return wind is not null || venue.Rules.Wind is not null ? true : null;
    }
}
