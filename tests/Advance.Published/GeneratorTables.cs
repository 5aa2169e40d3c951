using Advance.Handbook;
using UnitsNet;

namespace Advance.Published;

/// <summary>
/// Generating sets: rating convention and prime power (ISO 8528-1), an alternator maker's derating table, a chart of diesel consumption that many hirers
/// print; the mean after ISO 8528-1 from memory.
/// </summary>
public sealed class GeneratorTables
{
    /// <summary>Rated at 0.8 lagging: 100 kVA are 80 kW, 200 kVA 160 kW, 800 kVA 640 kW.</summary>
    [Theory]
    [InlineData(100, 80)]
    [InlineData(200, 160)]
    [InlineData(800, 640)]
    public void Power_at_the_rated_power_factor(double kilovoltamperes, double kilowatts) =>
        Assert.Equal(kilowatts, (double)Currents.Real(Kva(kilovoltamperes), Generators.RatedPowerFactor).Kilowatts, 9);

    /// <summary>18 kVA of three phases at 208 V carry 50 A; 100 kVA at 240 V between two conductors 417 A.</summary>
    [Fact]
    public void Rated_current()
    {
        Near.AsPrinted("50", Generators.ThreePhaseCurrent(Kva(18), ElectricPotential.FromVolts(208)).Amperes);
        Near.AsPrinted("417", Generators.SinglePhaseCurrent(Kva(100), ElectricPotential.FromVolts(240)).Amperes);
    }

    /// <summary>Three times the rated current, as makers of alternators print it: 60 kVA at 400 V hold 260 A, which does not surely open a C32.</summary>
    [Fact]
    public void Sustained_fault_current()
    {
        var sustained = Generators.Sustained(Generators.ThreePhaseCurrent(Kva(60), ElectricPotential.FromVolts(400)), Generators.AssumedSustained);
        Near.AsPrinted("260", sustained.Amperes);
        Assert.True(sustained.Amperes < Breakers.OpensFrom(BreakerType.C) * 32);
    }

    /// <summary>0.97 at 1500 m and 0.97 at 45 °C leave 470.5 kVA of 500.</summary>
    [Fact]
    public void Derating_multiplies() => Near.AsPrinted("470.5", Generators.Derated(Kva(500), [0.97, 0.97]).Kilovoltamperes);

    [Theory]
    [InlineData(0)]
    [InlineData(1.1)]
    public void What_is_no_derating(double factor) => Assert.Throws<ArgumentOutOfRangeException>(() => Generators.Derated(Kva(500), [factor]));

    /// <summary>A government specification of class G2: first step to 50 %, then 30 % and 20 % more.</summary>
    [Theory]
    [InlineData(50, 50)]
    [InlineData(30, 30)]
    [InlineData(20, 20)]
    public void Steps(double step, double percent) => Assert.Equal(percent, Generators.Step(Kva(step), Kva(100)).Percent, 9);

    /// <summary>From memory: under 30 % counts as 30 %.</summary>
    [Fact]
    public void Mean_load_from_memory()
    {
        var mean = Generators.MeanLoad([Spell(90, 4), Spell(50, 4), Spell(10, 8)]);
        Assert.Equal(50, mean.Percent, 9);
        Assert.Throws<ArgumentException>(() => Generators.MeanLoad([]));
    }

    /// <summary>The chart's rows of 100 kW and 500 kW, litres an hour.</summary>
    [Theory]
    [InlineData(25, "15.5", 9.8, 15.5, 22.0, 28.0, 50)]
    [InlineData(25, "22.0", 9.8, 15.5, 22.0, 28.0, 75)]
    [InlineData(25, "28.0", 9.8, 15.5, 22.0, 28.0, 100)]
    [InlineData(25, "41.6", 41.6, 70.0, 99.9, 135.1, 25)]
    [InlineData(25, "85.0", 41.6, 70.0, 99.9, 135.1, 62.5)]
    public void Consumption(double first, string litres, double a, double b, double c, double d, double percent)
    {
        var curve = new FuelCurve([Point(first, a), Point(100, d), Point(50, b), Point(75, c)]);
        Near.Within(double.Parse(litres, System.Globalization.CultureInfo.InvariantCulture), curve.At(Ratio.FromPercent(percent))!.Value.LitersPerHour, 0.06);
    }

    [Fact]
    public void Below_the_first_point_it_burns_as_much_as_there_and_above_the_last_nobody_knows()
    {
        var curve = new FuelCurve([Point(50, 15.5), Point(75, 22)]);
        Assert.Equal(15.5, curve.At(Ratio.FromPercent(10))!.Value.LitersPerHour, 9);
        Assert.Null(curve.At(Ratio.FromPercent(80)));
        Assert.Equal((50, 75), (curve.Around(Ratio.FromPercent(60))!.Value.Low.Load.Percent, curve.Around(Ratio.FromPercent(60))!.Value.High.Load.Percent));
        Assert.Equal((50, 50), (curve.Around(Ratio.FromPercent(10))!.Value.Low.Load.Percent, curve.Around(Ratio.FromPercent(10))!.Value.High.Load.Percent));
        Assert.Equal((75, 75), (curve.Around(Ratio.FromPercent(75))!.Value.Low.Load.Percent, curve.Around(Ratio.FromPercent(75))!.Value.High.Load.Percent));
    }

    [Fact]
    public void A_curve_has_points_of_different_loads()
    {
        Assert.Throws<ArgumentException>(() => new FuelCurve([]));
        Assert.Throws<ArgumentException>(() => new FuelCurve([Point(50, 15), Point(50, 16)]));
    }

    private static (Ratio Load, Duration Time) Spell(double percent, double hours) => (Ratio.FromPercent(percent), Duration.FromHours(hours));

    private static (Ratio Load, VolumeFlow Burns) Point(double percent, double litres) => (Ratio.FromPercent(percent), VolumeFlow.FromLitersPerHour(litres));

    private static ElectricApparentPower Kva(double value) => ElectricApparentPower.FromKilovoltamperes(value);
}
