using Advance.Handbook;
using UnitsNet;

namespace Advance.Published;

/// <summary>
/// Residual devices: BS 7671:2018 + A2:2022 531.3.2, 531.3.3 and 543.7.1, IEC 61008-1 (manuals of test sets), UL 943; selectivity after BS 7671 536.4.1.4 from
/// memory.
/// </summary>
public sealed class ResidualDeviceTables
{
    /// <summary>531.3.3 as a forum quotes it: A sees what AC sees and more, F what A sees and more, B what F sees and more.</summary>
    [Theory]
    [InlineData(ResidualType.AC, ResidualType.A, false)]
    [InlineData(ResidualType.A, ResidualType.AC, true)]
    [InlineData(ResidualType.A, ResidualType.A, true)]
    [InlineData(ResidualType.A, ResidualType.F, false)]
    [InlineData(ResidualType.F, ResidualType.A, true)]
    [InlineData(ResidualType.F, ResidualType.B, false)]
    [InlineData(ResidualType.B, ResidualType.F, true)]
    public void Types(ResidualType device, ResidualType needed, bool sees) => Assert.Equal(sees, ResidualDevices.Sees(device, needed));

    /// <summary>536.4.1.4, from memory.</summary>
    [Theory]
    [InlineData(300, true, 30, true)]
    [InlineData(100, true, 30, true)]
    [InlineData(90, true, 30, true)]
    [InlineData(300, false, 30, false)]
    [InlineData(300, null, 30, null)]
    [InlineData(30, true, 30, false)]
    [InlineData(30, null, 30, false)]
    [InlineData(300, true, 300, false)]
    public void Selectivity_from_memory(double farther, bool? isDelayed, double nearer, bool? selective) =>
        Assert.Equal(selective, ResidualDevices.IsSelective(Milliamperes(farther), isDelayed, Milliamperes(nearer)));

    /// <summary>IEC 61008-1 and IEC 61009-1 as two manuals of test sets print them.</summary>
    [Theory]
    [InlineData(1, false, 300)]
    [InlineData(5, false, 40)]
    [InlineData(1, true, 500)]
    [InlineData(5, true, 150)]
    public void Break_times(int times, bool isDelayed, double milliseconds) =>
        Assert.Equal(milliseconds, ResidualDevices.Opens(times, isDelayed).Milliseconds, 9);

    /// <summary>IEC 61008-1, Table 1, from memory.</summary>
    [Theory]
    [InlineData(2, false, 150)]
    [InlineData(2, true, 200)]
    public void Break_times_from_memory(int times, bool isDelayed, double milliseconds) =>
        Assert.Equal(milliseconds, ResidualDevices.Opens(times, isDelayed).Milliseconds, 9);

    [Fact]
    public void Below_its_rating_it_need_not_open() => Assert.Throws<ArgumentOutOfRangeException>(() => ResidualDevices.Opens(0, isDelayed: false));

    /// <summary>531.3.2: 9 mA for 30 mA, so two things of 3.5 mA and twelve of 0.75 mA.</summary>
    [Fact]
    public void Leakage_in_normal_use()
    {
        Assert.Equal(9, ResidualDevices.LeakageShare * 30, 9);
        Assert.Equal(2, Math.Floor(ResidualDevices.LeakageShare * 30 / 3.5));
        Assert.Equal(12, Math.Floor(ResidualDevices.LeakageShare * 30 / 0.75));
    }

    /// <summary>UL 943, class A.</summary>
    [Theory]
    [InlineData(6, "5.59")]
    [InlineData(30, "0.56")]
    [InlineData(264, "0.025")]
    public void Personnel_devices(double milliamperes, string seconds) => Near.AsPrinted(seconds, PersonnelDevices.Opens(Milliamperes(milliamperes)).Seconds);

    [Fact]
    public void Personnel_devices_hold_below_4_and_open_from_6_milliamperes()
    {
        Assert.Equal((4, 6), (PersonnelDevices.HoldsBelow.Milliamperes, PersonnelDevices.OpensFrom.Milliamperes));
        Assert.Throws<ArgumentOutOfRangeException>(() => PersonnelDevices.Opens(Milliamperes(5)));
    }

    /// <summary>543.7.1: 10 mA as an accessory maker's guide prints it; 3.5 mA is also the limit for class I equipment in IEC 60950-1, Table 5A.</summary>
    [Fact]
    public void Protective_conductor_currents() =>
        Assert.Equal((3.5, 10.0), (ProtectiveConductors.MostByPlug.Milliamperes, ProtectiveConductors.MostByOneConductor.Milliamperes));

    private static ElectricCurrent Milliamperes(double value) => ElectricCurrent.FromMilliamperes(value);
}
