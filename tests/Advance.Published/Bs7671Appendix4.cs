using Advance.Domain.Facts;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Published;

/// <summary>BS 7671, appendix 4: Tables 4F3A, 4F3B, 4F1A and 4F1B for 60 °C flexible cable, and examples worked with tabulated drop.</summary>
public sealed class Bs7671Appendix4
{
    [Theory]
    [InlineData(0.5, 3.0, 3.0)]
    [InlineData(0.75, 6.0, 6.0)]
    [InlineData(1, 10.0, 10.0)]
    [InlineData(1.25, 13.0, null)]
    [InlineData(1.5, 16.0, 16.0)]
    [InlineData(2.5, 25.0, 20.0)]
    public void Table_4F3A(double size, double? onePhase, double? threePhase) => Carries(size, onePhase, threePhase, null);

    [Theory]
    [InlineData(4, 30.0, 26.0, null)]
    [InlineData(6, 39.0, 34.0, null)]
    [InlineData(10, 51.0, 47.0, null)]
    [InlineData(16, 73.0, 63.0, null)]
    [InlineData(25, 97.0, 83.0, null)]
    [InlineData(35, null, 102.0, 140.0)]
    [InlineData(50, null, 124.0, 175.0)]
    [InlineData(70, null, 158.0, 216.0)]
    [InlineData(95, null, 192.0, 258.0)]
    [InlineData(120, null, 222.0, 302.0)]
    [InlineData(150, null, 255.0, 347.0)]
    [InlineData(185, null, 291.0, 394.0)]
    [InlineData(240, null, 343.0, 471.0)]
    public void Table_4F1A(double size, double? onePhase, double? threePhase, double? singles) => Carries(size, onePhase, threePhase, singles);

    [Fact]
    public void Four_square_is_of_4F1A_and_not_the_higher_4F3A()
    {
        Assert.NotEqual(32, FlexibleCables.OnePhase(4)!.Value.Amperes);
        Assert.NotEqual(25, FlexibleCables.ThreePhase(4)!.Value.Amperes);
        Assert.Equal(Bs7671.Table4F1A, FlexibleCables.CapacityTable(4));
        Assert.Equal(Bs7671.Table4F3A, FlexibleCables.CapacityTable(2.5));
        Assert.Equal(Bs7671.Table4F1B, FlexibleCables.DropTable(4));
        Assert.Equal(Bs7671.Table4F3B, FlexibleCables.DropTable(2.5));
    }

    [Fact]
    public void Thirty_five_and_fifty_square_of_60_degrees_do_not_carry_125_A()
    {
        Assert.True(FlexibleCables.ThreePhase(35)!.Value.Amperes < 125);
        Assert.True(FlexibleCables.ThreePhase(50)!.Value.Amperes < 125);
    }

    [Theory]
    [InlineData(0.5, 93.0, 80.0)]
    [InlineData(0.75, 62.0, 54.0)]
    [InlineData(1, 46.0, 40.0)]
    [InlineData(1.25, 37.0, null)]
    [InlineData(1.5, 32.0, 27.0)]
    [InlineData(2.5, 19.0, 16.0)]
    [InlineData(4, 12.0, 10.0)]
    public void Table_4F3B(double size, double? onePhase, double? threePhase) => Drops(size, onePhase, threePhase, null);

    [Theory]
    [InlineData(4, 12.0, 10.0, null)]
    [InlineData(6, 7.8, 6.7, null)]
    [InlineData(10, 4.6, 4.0, null)]
    [InlineData(16, 2.9, 2.5, null)]
    [InlineData(25, 1.85, 1.55, null)]
    [InlineData(35, null, 1.15, 1.32)]
    [InlineData(50, null, 0.84, 0.93)]
    [InlineData(70, null, 0.58, 0.67)]
    [InlineData(95, null, 0.44, 0.53)]
    [InlineData(120, null, 0.36, 0.43)]
    [InlineData(150, null, 0.30, 0.36)]
    [InlineData(185, null, 0.26, 0.32)]
    [InlineData(240, null, 0.21, 0.27)]
    public void Table_4F1B_impedance(double size, double? onePhase, double? threePhase, double? singles) => Drops(size, onePhase, threePhase, singles);

    [Theory]
    [InlineData(0.5)]
    [InlineData(0.75)]
    [InlineData(1)]
    [InlineData(1.5)]
    [InlineData(2.5)]
    [InlineData(4)]
    public void Table_4F3B_is_twice_the_tinned_conductor_at_60_degrees(double size)
    {
        var hot = Conductors.From20(Conductors.Class5(size)!.Value, Temperature.FromDegreesCelsius(60)).OhmsPerMetre * 1000;
        Near.Within(1.1572, hot / (Conductors.Class5(size)!.Value.OhmsPerMetre * 1000), 1e-4);
        Near.Within(FlexibleCables.DropOnePhase(size)!.Value.OhmsPerMetre * 1000, 2 * hot, 0.5);
        Near.Within(FlexibleCables.DropThreePhase(size)!.Value.OhmsPerMetre * 1000, Math.Sqrt(3) * hot, 0.5);
    }

    [Theory]
    [InlineData(30, 20, 11, "6.6")]
    [InlineData(16, 10, 29, "4.64")]
    [InlineData(37.3, 30, 4.4, "4.92")]
    public void Worked_with_tables_of_fixed_wiring(double amperes, double metres, double tabulated, string volts) =>
        Near.AsPrinted(volts, VoltageDrop.Tabulated(ResistancePerLength.FromMillivoltsPerAmpereMetre(tabulated), A(amperes), Length.FromMeters(metres)).Volts);

    [Theory]
    [InlineData(16, 50, 2.5, "15.2", "6.61")]
    [InlineData(32, 30, 6, "7.49", "3.26")]
    public void Worked_here_with_the_tables_of_flexible_cable_one_phase(double amperes, double metres, double size, string volts, string percent)
    {
        var drop = VoltageDrop.Tabulated(FlexibleCables.DropOnePhase(size)!.Value, A(amperes), Length.FromMeters(metres));
        Near.AsPrinted(volts, drop.Volts);
        Near.AsPrinted(percent, VoltageDrop.Share(drop, ElectricPotential.FromVolts(230)).Percent);
    }

    [Theory]
    [InlineData(32, 50, 6, "10.72", "2.68")]
    [InlineData(63, 75, 16, "11.81", "2.95")]
    [InlineData(125, 50, 35, "7.19", "1.80")]
    public void Worked_here_with_the_tables_of_flexible_cable_three_phases(double amperes, double metres, double size, string volts, string percent)
    {
        var drop = VoltageDrop.Tabulated(FlexibleCables.DropThreePhase(size)!.Value, A(amperes), Length.FromMeters(metres));
        Near.AsPrinted(volts, drop.Volts);
        Near.AsPrinted(percent, VoltageDrop.Share(drop, ElectricPotential.FromVolts(400)).Percent);
    }

    private static void Carries(double size, double? onePhase, double? threePhase, double? singles)
    {
        Assert.Equal(onePhase, FlexibleCables.OnePhase(size)?.Amperes);
        Assert.Equal(threePhase, FlexibleCables.ThreePhase(size)?.Amperes);
        Assert.Equal(singles, FlexibleCables.TwoSingles(size)?.Amperes);
    }

    private static void Drops(double size, double? onePhase, double? threePhase, double? singles)
    {
        Same(onePhase, FlexibleCables.DropOnePhase(size));
        Same(threePhase, FlexibleCables.DropThreePhase(size));
        Same(singles, FlexibleCables.DropTwoSingles(size));
    }

    private static void Same(double? millivolts, ResistancePerLength? tabulated)
    {
        Assert.Equal(millivolts is null, tabulated is null);
        if (millivolts is { } published)
        {
            Near.Within(published, tabulated!.Value.OhmsPerMetre * 1000, 1e-9);
        }
    }

    private static ElectricCurrent A(double amperes) => ElectricCurrent.FromAmperes(amperes);
}
