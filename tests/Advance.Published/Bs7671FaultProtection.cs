using Advance.Handbook;
using UnitsNet;

namespace Advance.Published;

/// <summary>
/// BS 7671:2018 + A2:2022, part 4: Tables 41.1, 41.2, 41.3 and 41.4 with Cmin, 411.5.3 and 434.5.2, as pages for electricians reprint them, and
/// worked examples of such pages.
/// </summary>
public sealed class Bs7671FaultProtection
{
    private static readonly ElectricPotential U0 = ElectricPotential.FromVolts(230);

    /// <summary>Table 41.1, alternating current.</summary>
    [Theory]
    [InlineData(50, null, null)]
    [InlineData(110, 0.8, 0.3)]
    [InlineData(120, 0.8, 0.3)]
    [InlineData(230, 0.4, 0.2)]
    [InlineData(277, 0.2, 0.07)]
    [InlineData(400, 0.2, 0.07)]
    [InlineData(690, 0.1, 0.04)]
    public void Disconnection_times_of_final_circuits(double toEarth, double? conductor, double? ground)
    {
        var volts = ElectricPotential.FromVolts(toEarth);
        Assert.Equal(conductor, DisconnectionTimes.Final(EarthingSystem.TN, volts)?.Seconds);
        Assert.Equal(ground, DisconnectionTimes.Final(EarthingSystem.TT, volts)?.Seconds);
    }

    /// <summary>411.3.2.3 and 411.3.2.4; 411.3.2.2 for the ratings.</summary>
    [Fact]
    public void Disconnection_times_of_distribution_circuits()
    {
        Assert.Equal(5, DisconnectionTimes.Distribution(EarthingSystem.TN).Seconds);
        Assert.Equal(1, DisconnectionTimes.Distribution(EarthingSystem.TT).Seconds);
        Assert.Equal((63, 32), (DisconnectionTimes.MostWithOutlets, DisconnectionTimes.MostWiredIn));
    }

    /// <summary>Table 41.3, circuit-breakers of type B, C, D.</summary>
    [Theory]
    [InlineData(6, "7.28", "3.64", "1.82")]
    [InlineData(10, "4.37", "2.19", "1.09")]
    [InlineData(16, "2.73", "1.37", "0.68")]
    [InlineData(20, "2.19", "1.09", "0.55")]
    [InlineData(25, "1.75", "0.87", "0.44")]
    [InlineData(32, "1.37", "0.68", "0.34")]
    [InlineData(40, "1.09", "0.55", "0.27")]
    [InlineData(50, "0.87", "0.44", "0.22")]
    [InlineData(63, "0.69", "0.35", "0.17")]
    [InlineData(80, "0.55", "0.27", "0.14")]
    [InlineData(100, "0.44", "0.22", "0.11")]
    [InlineData(125, "0.35", "0.17", "0.09")]
    public void Loop_impedance_of_breakers(double rated, string b, string c, string d)
    {
        AsPrinted(b, BreakerType.B, rated);
        AsPrinted(c, BreakerType.C, rated);
        AsPrinted(d, BreakerType.D, rated);
    }

    /// <summary>Tables 41.2 and 41.4, gG fuses of BS 88-2.</summary>
    [Theory]
    [InlineData(2, 33.1, 44.0)]
    [InlineData(4, 15.6, 21.0)]
    [InlineData(6, 7.8, 12.0)]
    [InlineData(10, 4.65, 6.8)]
    [InlineData(16, 2.43, 4.0)]
    [InlineData(20, 1.68, 2.8)]
    [InlineData(25, 1.29, 2.2)]
    [InlineData(32, 0.99, 1.7)]
    [InlineData(40, 0.75, 1.3)]
    [InlineData(50, 0.57, 0.99)]
    [InlineData(63, 0.44, 0.78)]
    [InlineData(80, null, 0.55)]
    [InlineData(100, null, 0.42)]
    [InlineData(125, null, 0.32)]
    [InlineData(160, null, 0.27)]
    [InlineData(200, null, 0.18)]
    public void Loop_impedance_of_fuses(double rated, double? fast, double? slow) => Fuse(FuseType.GeneralPurpose, rated, fast, slow);

    /// <summary>The same tables, fuses of BS 1362.</summary>
    [Theory]
    [InlineData(3, 15.6, 22.0)]
    [InlineData(13, 2.3, 3.64)]
    [InlineData(5, null, null)]
    public void Loop_impedance_of_plug_fuses(double rated, double? fast, double? slow) => Fuse(FuseType.Plug, rated, fast, slow);

    [Theory]
    [InlineData(0.2, null)]
    [InlineData(0.8, 0.99)]
    [InlineData(1, 0.99)]
    [InlineData(5, 1.7)]
    public void Fuses_at_other_times(double seconds, double? ohms) =>
        Assert.Equal(ohms, Fuses.Loop(FuseType.GeneralPurpose, A(32), Duration.FromSeconds(seconds))?.Ohms);

    /// <summary>BS 7671, appendix 3, figure 3A3: 32 A gG opens in 0.4 s at 220 A and in 5 s at 125 A (from memory).</summary>
    [Theory]
    [InlineData(0.4, 220)]
    [InlineData(5, 125)]
    public void The_current_behind_a_fuses_loop(double seconds, double amperes) => Near.WithinPercent(
        amperes, Fuses.Operating(Fuses.Loop(FuseType.GeneralPurpose, A(32), Duration.FromSeconds(seconds))!.Value).Amperes, 3);

    /// <summary>A page on 2391 inspection: 230 / 0.28, 0.35, 0.20.</summary>
    [Theory]
    [InlineData(0.28, "821")]
    [InlineData(0.35, "657")]
    [InlineData(0.20, "1150")]
    public void Prospective_current(double ohms, string amperes) =>
        Near.AsPrinted(amperes, ProspectiveCurrents.OneLine(U0, ElectricResistance.FromOhms(ohms)).Amperes);

    /// <summary>A training page: three phases by twice that of one.</summary>
    [Fact]
    public void Of_three_lines_twice_as_much() => Assert.Equal(2300, ProspectiveCurrents.ThreeLines(A(1150)).Amperes, 9);

    /// <summary>Zs = Ze + (R1 + R2); the loop can never be less than its parts at a right angle.</summary>
    [Fact]
    public void The_loop_lies_between_both_sums()
    {
        var (supply, cables) = (ElectricResistance.FromOhms(0.3), ElectricResistance.FromOhms(0.4));
        Assert.Equal(0.7, FaultLoop.AtMost(supply, cables).Ohms, 12);
        Assert.Equal(0.5, FaultLoop.AtLeast(supply, cables).Ohms, 12);
        for (var turn = 0; turn <= 90; turn += 15)
        {
            var loop = (supply.Ohms + System.Numerics.Complex.FromPolarCoordinates(cables.Ohms, turn * Math.PI / 180)).Magnitude;
            Assert.InRange(loop, FaultLoop.AtLeast(supply, cables).Ohms - 1e-12, FaultLoop.AtMost(supply, cables).Ohms + 1e-12);
        }
    }

    /// <summary>Worked here: 50 m of 2.5 mm² rubber at 60 °C, both ways, 0.95 Ω, behind 0.35 Ω: a C16 (1.37 Ω) opens, a C20 (1.09 Ω) does not.</summary>
    [Fact]
    public void A_long_lead_behind_a_C16()
    {
        var one = Conductors.OneWay(Conductors.From20(Conductors.Class5(2.5)!.Value, Temperature.FromDegreesCelsius(60)), Length.FromMeters(50));
        var cables = FaultLoop.OfCables(one, one, ElectricResistance.Zero, ElectricResistance.Zero);
        var loop = FaultLoop.AtMost(ElectricResistance.FromOhms(0.35), cables);
        Near.AsPrinted("0.95", cables.Ohms);
        Assert.InRange(loop.Ohms, Permitted(BreakerType.C, 20), Permitted(BreakerType.C, 16));
        Assert.InRange(FaultLoop.OfCables(one, one, one, one).Ohms, Math.Sqrt(2) * cables.Ohms - 1e-12, Math.Sqrt(2) * cables.Ohms + 1e-12);
    }

    /// <summary>Table 41.5: 30, 100, 300, 500 mA.</summary>
    [Theory]
    [InlineData(30, "1667")]
    [InlineData(100, "500")]
    [InlineData(300, "167")]
    [InlineData(500, "100")]
    public void Earth_electrode_of_a_TT_system(double milliamperes, string ohms) =>
        Near.AsPrinted(ohms, EarthElectrodes.Most(ElectricCurrent.FromMilliamperes(milliamperes)).Ohms);

    /// <summary>On-site guide, as a forum quotes it: 200 Ω with 250 mA is at the limit of 50 V.</summary>
    [Fact]
    public void Touch_voltage_of_200_ohm_at_250_mA() =>
        Assert.Equal(EarthElectrodes.Touch.Volts, EarthElectrodes.TouchVoltage(ElectricResistance.FromOhms(200), ElectricCurrent.FromMilliamperes(250)).Volts, 9);

    /// <summary>Table 54.7.</summary>
    [Theory]
    [InlineData(2.5, 2.5)]
    [InlineData(16, 16)]
    [InlineData(25, 16)]
    [InlineData(35, 16)]
    [InlineData(50, 25)]
    [InlineData(70, 35)]
    public void Earth_conductor_that_nobody_worked_out(double line, double earth) => Assert.Equal(earth, ProtectiveConductors.LeastSection(line));

    private static double Permitted(BreakerType type, double rated) => FaultLoop.Permitted(U0, A(Breakers.OpensFrom(type) * rated)).Ohms;

    private static void AsPrinted(string ohms, BreakerType type, double rated) => Near.AsPrinted(ohms, Permitted(type, rated));

    private static void Fuse(FuseType type, double rated, double? fast, double? slow)
    {
        Assert.Equal(fast, Fuses.Loop(type, A(rated), Duration.FromSeconds(0.4))?.Ohms);
        Assert.Equal(slow, Fuses.Loop(type, A(rated), Duration.FromSeconds(5))?.Ohms);
    }

    private static ElectricCurrent A(double amperes) => ElectricCurrent.FromAmperes(amperes);
}
