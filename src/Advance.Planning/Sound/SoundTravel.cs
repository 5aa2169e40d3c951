using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>How long sound is on its way.</summary>
internal static class SoundTravel
{
    private const string Policy = "temperature";

    // At absolute zero sound stands still, and nothing can be timed; whoever writes that means something else.
    private const double AbsoluteZero = -273.15;

    private const double Ears = 1.5;

    /// <summary>The speed of sound on the night: at the temperature of the gig, else at the company's usual one.</summary>
    public static Figure<Speed> Speed(Gig gig, Policies policies) =>
        Sum.Of("speed of sound", "c = 331.3 · √(1 + T / 273.15)", Acoustics.SpeedOfSound)
            .Put("T", Possible(gig.Temperature is { IsKnown: true } given ? Figure.From(given) : Assumed(gig.Temperature?.Doubt, policies)))
            .Gives(SoundSpeed.In);

    /// <summary>The distance between two spots; unknown where one of them is.</summary>
    public static Figure<Length> Distance(string name, Spot? from, Spot? to, Doubts restsOn) =>
        Sum.Of(name, "d = √((x₁ - x₂)² + (y₁ - y₂)²)", Publication.Arithmetic)
            .Put("x₁", Coordinate(from?.X, restsOn))
            .Put("y₁", Coordinate(from?.Y, restsOn))
            .Put("x₂", Coordinate(to?.X, restsOn))
            .Put("y₂", Coordinate(to?.Y, restsOn))
            .Gives((fromX, fromY, toX, toY) => Length.FromMeters(Math.Sqrt(Square(fromX.Meters - toX.Meters) + Square(fromY.Meters - toY.Meters))));

    /// <summary>The way from a stack to a spot; from a hang down to ears at 1.5 m, which is between those of who sits and who stands.</summary>
    public static Figure<Length> Way(string name, StackPlan? from, Spot? to, Doubts restsOn)
    {
        var plan = Distance(name, from?.Spot, to, restsOn);
        return from is not { IsHang: true } hang ? plan
            : Sum.Of($"{name}, down from the hang", "d = √(p² + (h − 1.5)²)", Publication.CommonPractice)
                .Put("p", plan)
                .Put("h", new Figure<Length>(HangHeights.Middle(hang) is { } middle ? Length.FromMeters(middle) : null, hang.RestsOn, Reason.Derived.It))
                .Gives((level, high) => Length.FromMeters(Math.Sqrt(Square(level.Meters) + Square(high.Meters - Ears))));
    }

    private static Figure<Temperature> Assumed(Doubt? doubt, Policies policies) =>
        Figure.Policy(Policy, policies.Temperature) with { RestsOn = Doubts.Of(doubt) };

    private static Figure<Temperature> Possible(Figure<Temperature> air) => air.Value?.DegreesCelsius <= AbsoluteZero ? air with { Value = null } : air;

    private static Figure<Length> Coordinate(double? metres, Doubts restsOn) =>
        new(metres is { } known ? Length.FromMeters(known) : null, restsOn, Reason.Derived.It);

    private static double Square(double value) => value * value;
}
