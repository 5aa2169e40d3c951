using Advance.Handbook;
using UnitsNet;

namespace Advance.Published;

/// <summary>Worked examples of things that tip and slide.</summary>
public sealed class OverturningExamples
{
    /// <summary>
    /// A hoarding of 2 m by 3 m at 9.22 m/s: q 52.11 N/m² (0.613 v²), F 312.66 N, M 312.66 N·m, held by 2,119 N on an arm of 0.15 m, ratio 1.017. The page
    /// calls these 2,119 kilograms; 0.09 m³ of 2,400 kg/m³ weigh 2,119 newtons.
    /// </summary>
    [Fact]
    public void Hoarding()
    {
        var pressure = WindPressure.Of(Speed.FromMetersPerSecond(9.22), 2 * 0.613);
        var force = WindPressure.On(pressure, Area.FromSquareMeters(6));
        Near.Within(52.11, pressure.Pascals, 0.005);
        Near.Within(312.66, force.Newtons, 0.02);
        var moment = Torque.FromNewtonMeters(force.Newtons * 2 / 2);
        var weight = Mass.FromKilograms(0.09 * 2400 * 9.81 / TipAndSlide.Gravity);
        Near.Within(2119, weight.Kilograms * TipAndSlide.Gravity, 0.5);
        Near.Within(1.017, TipAndSlide.Tipping(weight, Length.FromMeters(0.15), moment), 0.001);
    }

    /// <summary>IEC 62368-1 8.6 tilts by 10°: a half base of 0.1763 times the height of the centre of gravity just stands.</summary>
    [Fact]
    public void Ten_degrees() => Near.Within(10, TipAndSlide.TipAngle(Length.FromMeters(0.1763), Length.FromMeters(1)).Degrees, 0.005);

    /// <summary>A block on an incline slides where the tangent of the slope is its friction, and tips where the slope is its tip angle (statics textbooks).</summary>
    [Theory]
    [InlineData(0.2)]
    [InlineData(0.35)]
    public void Incline(double friction)
    {
        var slope = Angle.FromRadians(Math.Atan(friction));
        Near.Within(0, TipAndSlide.Grip(friction, slope), 1e-12);
        var (inside, height) = (Length.FromMeters(friction), Length.FromMeters(1));
        Near.Within(0, TipAndSlide.Arm(inside, height, TipAndSlide.TipAngle(inside, height)).Meters, 1e-12);
    }

    /// <summary>At the gust that was worked out the ratio is the one asked for, and the ballast that is missing then is none.</summary>
    [Fact]
    public void Gust_and_ratio_agree()
    {
        var (mass, arm, seen) = (Mass.FromKilograms(300), Length.FromMeters(0.33), Volume.FromCubicMeters(3.1));
        var gust = TipAndSlide.TippingGust(mass, arm, 1.5, seen);
        var moment = Torque.FromNewtonMeters(WindPressure.Of(gust).Pascals * seen.CubicMeters);
        Near.Within(1.5, TipAndSlide.Tipping(mass, arm, moment), 1e-9);
        var held = Torque.FromNewtonMeters(TipAndSlide.Gravity * mass.Kilograms * arm.Meters);
        Near.Within(0, Ballasting.AgainstTipping(1.5, moment, held, arm).Kilograms, 1e-6);
        Near.Within(100, Ballasting.AgainstTipping(1.5, moment, held - Torque.FromNewtonMeters(TipAndSlide.Gravity * 100 * 0.33), arm).Kilograms, 1e-6);
        var slides = TipAndSlide.SlidingGust(mass, 0.2, 1.5, Area.FromSquareMeters(2));
        var push = WindPressure.On(WindPressure.Of(slides), Area.FromSquareMeters(2));
        Near.Within(1.5, TipAndSlide.Sliding(mass, 0.2, push), 1e-9);
        Near.Within(50, Ballasting.AgainstSliding(1.5, push, 0.2, Mass.FromKilograms(250)).Kilograms, 1e-6);
    }

    /// <summary>
    /// Meyerhof's effective width: 1,000 kN on a base of 3 m by 2 m, 0.3 m off centre, presses 1,000 / ((3 - 0.6) 2) = 208.3 kN/m² (foundation
    /// textbooks, from memory).
    /// </summary>
    [Fact]
    public void Effective_width_from_memory()
    {
        var mass = Mass.FromKilograms(1e6 / TipAndSlide.Gravity);
        var off = GroundPressure.Eccentricity(Torque.FromNewtonMeters(300e3), mass);
        Near.Within(0.3, off.Meters, 1e-9);
        Near.Within(208.3, GroundPressure.Under(mass, Length.FromMeters(3), off, Length.FromMeters(2)).Kilopascals, 0.05);
        Assert.Throws<ArgumentOutOfRangeException>(() => GroundPressure.Under(mass, Length.FromMeters(3), Length.FromMeters(1.5), Length.FromMeters(2)));
    }

    /// <summary>A triangle of 3, 4 and 5: 400 N of weight pushed by 300 N swings out by 36.87° and pulls 500 N.</summary>
    [Fact]
    public void Hangs_in_wind()
    {
        var mass = Mass.FromKilograms(400 / TipAndSlide.Gravity);
        Near.Within(36.87, HungInWind.Swing(Force.FromNewtons(300), mass).Degrees, 0.005);
        Near.Within(500, HungInWind.Pull(Force.FromNewtons(300), mass).Newtons, 1e-9);
    }

    /// <summary>A table of four legs 2 m apart, 400 kg and 981 N·m: 981 N each by its weight, 245 N more on two of them.</summary>
    [Fact]
    public void Four_legs()
    {
        var weight = 400 * TipAndSlide.Gravity;
        var shares = FootLoads.Shares([(-1, -1), (1, -1), (1, 1), (-1, 1)], 981 / weight, 0)!;
        Near.Within(980.665 + 245.25, weight * shares[1], 0.01);
        Near.Within(980.665 - 245.25, weight * shares[0], 0.01);
    }

    /// <summary>
    /// A group of six piles, two rows of three, 1 m apart, 600 kN 0.2 m off along the rows: <c>P / n ± M x / Σ x²</c>, 600 / 6 ± 120 · 1 / 4 =
    /// 130, 100 and 70 kN (foundation textbooks, from memory).
    /// </summary>
    [Fact]
    public void Six_piles_from_memory()
    {
        var shares = FootLoads.Shares([(-1, 0), (0, 0), (1, 0), (-1, 1), (0, 1), (1, 1)], 0.2, 0.5)!;
        Assert.All(shares.Zip([70, 100, 130, 70, 100, 130.0]), pair => Near.Within(pair.Second, 600 * pair.First, 1e-9));
    }

    /// <summary>Three legs carry by statics alone: moments about each side of their triangle, whatever gives.</summary>
    [Fact]
    public void Three_legs()
    {
        var shares = FootLoads.Shares([(0, 0), (4, 0), (1, 3)], 1.5, 0.9)!;
        Near.Within(0.9 / 3, shares[2], 1e-12);
        Near.Within((1.5 - (0.3 * 1)) / 4, shares[1], 1e-12);
        Near.Within(1 - shares[1] - shares[2], shares[0], 1e-12);
    }
}
