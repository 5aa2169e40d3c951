using Advance.Handbook;
using UnitsNet;

namespace Advance.Published;

/// <summary>
/// NEC (NFPA 70) 240.5(B)(4), cord sets made from listed parts: "20-ampere circuits — 16 AWG and larger", as quoted by a trade magazine for
/// electricians; and Table 210.21(B)(3), receptacles of 15 A or 20 A on a circuit of 20 A, from memory.
/// </summary>
public sealed class Nfpa70CordProtection
{
    [Theory]
    [InlineData("18", 20, false)]
    [InlineData("16", 20, true)]
    [InlineData("14", 20, true)]
    [InlineData("12", 20, true)]
    [InlineData("14", 15, true)]
    [InlineData("14", 30, false)]
    [InlineData("none", 20, false)]
    public void A_cord_is_protected_by_a_device(string gauge, double device, bool holds) =>
        Assert.Equal(holds, CordProtection.Holds(gauge, ElectricCurrent.FromAmperes(device)));

    [Theory]
    [InlineData(15, 20, true)]
    [InlineData(20, 20, true)]
    [InlineData(10, 20, false)]
    [InlineData(15, 30, false)]
    public void A_connector_may_be_on_a_circuit(double connector, double device, bool holds) =>
        Assert.Equal(holds, CordProtection.HoldsConnector(ElectricCurrent.FromAmperes(connector), ElectricCurrent.FromAmperes(device)));
}
