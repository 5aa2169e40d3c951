using Advance.Domain.Facts;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Published;

/// <summary>NEC (NFPA 70), chapter 9: Table 8 at 75 °C, its temperature note, Table 9 with note 2, and examples worked with them.</summary>
public sealed class Nfpa70Chapter9
{
    // Gauge, circular mils, ohm per 1000 ft.
    public static TheoryData<string, double, double> Stranded => new()
    {
        { "18", 1620, 7.95 },
        { "16", 2580, 4.99 },
        { "14", 4110, 3.14 },
        { "12", 6530, 1.98 },
        { "10", 10380, 1.24 },
        { "8", 16510, 0.778 },
        { "6", 26240, 0.491 },
        { "4", 41740, 0.308 },
        { "3", 52620, 0.245 },
        { "2", 66360, 0.194 },
        { "1", 83690, 0.154 },
        { "1/0", 105600, 0.122 },
        { "2/0", 133100, 0.0967 },
        { "3/0", 167800, 0.0766 },
        { "4/0", 211600, 0.0608 },
    };

    [Theory]
    [MemberData(nameof(Stranded))]
    public void Table_8_stranded_and_the_trades_constant_of_12_9(string gauge, double circularMils, double ohms)
    {
        var per1000 = Of(gauge).OhmsPerMetre * 304.8;
        Near.Within(ohms, per1000, 1e-9);
        Assert.InRange(per1000 * circularMils / 1000, 12.83, 12.94);
    }

    [Theory]
    [InlineData("14", 3.07)]
    [InlineData("12", 1.93)]
    [InlineData("10", 1.21)]
    [InlineData("8", 0.764)]
    public void Not_the_solid_row_that_some_pages_print_as_stranded(string gauge, double solid) =>
        Assert.True(Of(gauge).OhmsPerMetre * 304.8 > solid * 1.01);

    [Fact]
    public void Not_the_20_degree_value_of_physics_tables()
    {
        // 12 AWG solid at 20 °C is 1.588 ohm per 1000 ft; the table's 75 °C value is a quarter more.
        Near.Within(1.25, Of("12").OhmsPerMetre * 304.8 / 1.588, 0.01);
        Near.Within(0.82, Conductors.From75(new ResistancePerLength(1), Temperature.FromDegreesCelsius(20)).OhmsPerMetre, 0.005);
    }

    [Theory]
    [InlineData("12", "6.50")]
    [InlineData("10", "4.07")]
    [InlineData("2", "0.636")]
    [InlineData("4/0", "0.199")]
    public void The_same_per_kilometre(string gauge, string ohms) => Near.AsPrinted(ohms, Of(gauge).OhmsPerMetre * 1000);

    [Theory]
    [InlineData(0.052, 0.054, "0.073")]
    [InlineData(0.041, 0.062, "0.074")]
    [InlineData(0.051, 0.49, "0.44")]
    public void Table_9_note_2_effective_impedance_at_point_eighty_five(double reactance, double resistance, string effective)
    {
        var z = VoltageDrop.Effective(
            ResistancePerLength.FromOhmsPerThousandFeet(resistance),
            ResistancePerLength.FromOhmsPerThousandFeet(reactance),
            Angle.FromRadians(Math.Acos(0.85)));
        Near.AsPrinted(effective, z.OhmsPerMetre * 304.8);
    }

    [Theory]
    [InlineData(8, 100, 2.0, "3.2")]
    [InlineData(4, 100, 4.99, "4.0")]
    [InlineData(20, 100, 1.98, "7.92")]
    public void Two_wires(double amperes, double feet, double ohmsPer1000, string volts) =>
        Near.AsPrinted(volts, VoltageDrop.TwoWire(A(amperes), Length.FromFeet(feet), ResistancePerLength.FromOhmsPerThousandFeet(ohmsPer1000)).Volts);

    [Fact]
    public void Two_wires_of_16_AWG_lose_16_7_percent_of_24_V() =>
        // Printed from the rounded 4.0 V.
        Near.WithinPercent(16.7, VoltageDrop.Share(VoltageDrop.TwoWire(A(4), Length.FromFeet(100), Of("16")), ElectricPotential.FromVolts(24)).Percent, 0.5);

    [Fact]
    public void Three_phases_50_A_in_2_AWG_by_the_circular_mil_formula()
    {
        // The page works with K = 12.9 and 66,360 circular mils: 1.68 V.
        var drop = VoltageDrop.ThreePhase(A(50), Length.FromFeet(100), ResistancePerLength.FromOhmsPerThousandFeet(12.9 / 66.360));
        Near.AsPrinted("1.68", drop.Volts);
        Near.AsPrinted("0.81", VoltageDrop.Share(drop, ElectricPotential.FromVolts(208)).Percent);
        Near.WithinPercent(drop.Volts, VoltageDrop.ThreePhase(A(50), Length.FromFeet(100), Of("2")).Volts, 0.5);
    }

    [Fact]
    public void Three_phases_400_A_in_4_0_over_200_ft() =>
        Near.AsPrinted("8.42", VoltageDrop.ThreePhase(A(400), Length.FromFeet(200), Of("4/0")).Volts);

    [Theory]
    [InlineData(240, 228)]
    [InlineData(120, 114)]
    public void Five_percent_of_the_source(double volts, double least) =>
        Assert.Equal(5, VoltageDrop.Share(ElectricPotential.FromVolts(volts - least), ElectricPotential.FromVolts(volts)).Percent, 9);

    private static ResistancePerLength Of(string gauge) => Conductors.StrandedAt75(gauge)!.Value;

    private static ElectricCurrent A(double amperes) => ElectricCurrent.FromAmperes(amperes);
}
