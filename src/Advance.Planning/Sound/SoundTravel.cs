using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using UnitsNet;

namespace Advance.Planning;

/// <summary>How long sound is on its way.</summary>
internal static class SoundTravel
{
    private const string Policy = "temperature";

    private static readonly Publication IdealGas = new("speed of sound in dry air as an ideal gas, from 331.3 m/s at 0 °C", "", "", Standing.FromMemory);

    /// <summary>The speed of sound on the night: at the temperature of the gig, else at the company's usual one.</summary>
    public static Figure<Speed> Speed(Gig gig, Policies policies) =>
        Sum.Of("speed of sound", "c = 331.3 · √(1 + T / 273.15)", IdealGas)
            .Put("T", gig.Temperature is { IsKnown: true } given ? Figure.From(given.Select(Celsius)) : Assumed(gig.Temperature?.Doubt, policies))
            .Gives(celsius => UnitsNet.Speed.FromMetersPerSecond(331.3 * Math.Sqrt(1 + (celsius / 273.15))));

    /// <summary>How long sound takes for a way.</summary>
    public static Figure<Duration> Time(string name, Figure<Length> way, Figure<Speed> speed) =>
        Sum.Of(name, "t = s / c", Publication.Arithmetic).Put("s", way).Put("c", speed).Gives(Seconds);

    /// <summary>The distance between two spots; unknown where one of them is.</summary>
    public static Figure<Length> Distance(string name, Spot? from, Spot? to, Doubts restsOn) =>
        Sum.Of(name, "d = √((x₁ - x₂)² + (y₁ - y₂)²)", Publication.Arithmetic)
            .Put("x₁", Coordinate(from?.X, restsOn))
            .Put("y₁", Coordinate(from?.Y, restsOn))
            .Put("x₂", Coordinate(to?.X, restsOn))
            .Put("y₂", Coordinate(to?.Y, restsOn))
            .Gives((fromX, fromY, toX, toY) => Length.FromMeters(Math.Sqrt(Square(fromX.Meters - toX.Meters) + Square(fromY.Meters - toY.Meters))));

    private static Figure<double> Assumed(Doubt? doubt, Policies policies) =>
        Figure.Policy(Policy, Celsius(policies.Temperature)) with { RestsOn = Doubts.Of(doubt) };

    private static Duration Seconds(Length way, Speed speed) => Duration.FromSeconds(way.Meters / speed.MetersPerSecond);

    // Kept in kelvin, 20 degrees come back as 20.000000000000057.
    private static double Celsius(Temperature temperature) => Math.Round(temperature.DegreesCelsius, 9, MidpointRounding.AwayFromZero);

    private static Figure<Length> Coordinate(double? metres, Doubts restsOn) =>
        new(metres is { } known ? Length.FromMeters(known) : null, restsOn, Reason.Derived.It);

    private static double Square(double value) => value * value;
}
