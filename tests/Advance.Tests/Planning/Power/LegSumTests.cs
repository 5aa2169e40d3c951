using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Handbook;
using Advance.Planning;
using CsCheck;
using UnitsNet;

namespace Advance.Tests.Planning.Power;

/// <summary>Sums on a leg against the handbook's phasors, which are checked against published ones.</summary>
public sealed class LegSumTests
{
    private static readonly Gen<(double Amperes, double Lag, double Third)[]> Draws =
        Gen.Select(Gen.Double[0, 40], Gen.Double[-60, 60], Gen.Double[0, 90]).Array[2, 6];

    [Fact]
    public void Known_angles_and_harmonics_add_as_the_handbook_adds_them() => Draws.Sample(draws =>
    {
        var byHandbook = draws.Aggregate(PhasorSum.On(LegAngles.Single), (sum, draw) =>
            sum.LineToNeutral(0, ElectricCurrent.FromAmperes(draw.Amperes), Angle.FromDegrees(draw.Lag), Spectrum.Third(draw.Third / 100)));
        Assert.Equal(byHandbook.Leg(0).Amperes, Sum(draws.Select(Phasor)), 1e-9);
    });

    [Fact]
    public void What_has_no_angle_comes_on_top() => Gen.Select(Draws, Gen.Double[0, 40]).Sample((draws, plain) =>
        Assert.Equal(Sum(draws.Select(Phasor)) + plain, Sum(draws.Select(Phasor).Append(LegDraw.Plain(Amperes(plain)))), 1e-9));

    [Fact]
    public void A_harmonic_that_nobody_knows_makes_a_magnitude_of_it() => Draws.Sample(draws =>
        Assert.Equal(draws.Sum(draw => draw.Amperes), Sum(draws.Select(draw => Phasor(draw) with { ThirdHarmonic = null })), 1e-9));

    [Fact]
    public void One_unknown_draw_makes_the_sum_unknown() =>
        Assert.Null(LegSum.Of("x", [LegDraw.Plain(Amperes(1)), LegDraw.Plain(new Figure<ElectricCurrent>(null, Doubts.None, Reason.Derived.It))]).Value);

    private static LegDraw Phasor((double Amperes, double Lag, double Third) draw) => new(
        Amperes(draw.Amperes),
        new Figure<Angle>(Angle.FromDegrees(draw.Lag), Doubts.None, Reason.Derived.It),
        new Figure<Ratio>(Ratio.FromPercent(draw.Third), Doubts.None, Reason.Derived.It));

    private static Figure<ElectricCurrent> Amperes(double amperes) => new(ElectricCurrent.FromAmperes(amperes), Doubts.None, Reason.Derived.It);

    private static double Sum(IEnumerable<LegDraw> draws) => LegSum.Of("x", [.. draws]).Value!.Value.Amperes;
}
