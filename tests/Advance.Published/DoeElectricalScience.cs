using Advance.Handbook;
using UnitsNet;

namespace Advance.Published;

/// <summary>US Department of Energy, Fundamentals Handbook, Electrical Science: the three-phase example, and power and current as it defines them.</summary>
public sealed class DoeElectricalScience
{
    [Fact]
    public void Wye_240_V_100_A_at_a_power_factor_of_point_nine()
    {
        // The handbook rounds √3 to 1.73 and so prints 415.2 V, 64.6 kW and 71.8 kVA.
        var apparent = Currents.ApparentThreePhase(ElectricPotential.FromVolts(415.2), ElectricCurrent.FromAmperes(100));
        Near.WithinPercent(71.8, apparent.Kilovoltamperes, 0.2);
        Near.WithinPercent(64.6, (double)Currents.Real(apparent, 0.9).Kilowatts, 0.2);
        Near.WithinPercent(31.3, Math.Sqrt(Math.Pow(apparent.Kilovoltamperes, 2) - Math.Pow(0.9 * apparent.Kilovoltamperes, 2)), 0.2);
    }

    [Fact]
    public void The_same_the_other_way_round() =>
        Near.WithinPercent(100, Currents.ThreePhase(Power.FromKilowatts(64.6), ElectricPotential.FromVolts(415.2), 0.9).Amperes, 0.2);
}
