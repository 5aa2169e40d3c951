using Advance.Handbook;
using UnitsNet;

namespace Advance.Published;

/// <summary>Mains connectors, as their standards and an open enumeration of outlets have them.</summary>
public sealed class ConnectorTables
{
    /// <summary>ANSI/NEMA WD 6 by the outlet types of DMTF Redfish, Circuit.PlugType: voltage, amperes, live poles, neutral; earth is always there.</summary>
    [Theory]
    [InlineData("5-15", 125, 15, 1, true, 3)]
    [InlineData("5-20", 125, 20, 1, true, 3)]
    [InlineData("L5-20", 125, 20, 1, true, 3)]
    [InlineData("L5-30", 125, 30, 1, true, 3)]
    [InlineData("6-20", 250, 20, 2, false, 3)]
    [InlineData("L6-30", 250, 30, 2, false, 3)]
    [InlineData("L14-20", 250, 20, 2, true, 4)]
    [InlineData("L14-30", 250, 30, 2, true, 4)]
    [InlineData("14-50", 250, 50, 2, true, 4)]
    [InlineData("L15-20", 250, 20, 3, false, 4)]
    [InlineData("L15-30", 250, 30, 3, false, 4)]
    [InlineData("L21-20", 208, 20, 3, true, 5)]
    [InlineData("L21-30", 208, 30, 3, true, 5)]
    [InlineData("L22-30", 480, 30, 3, true, 5)]
    public void Of_North_America(string name, double volts, double amperes, int lines, bool hasNeutral, int contacts)
    {
        var connector = MainsConnectors.Find(name)!;
        Assert.Equal((lines, hasNeutral, contacts), (connector.Lines, connector.HasNeutral, connector.Contacts));
        Assert.Equal(amperes, connector.Rating.Amperes);
        Assert.Equal(volts, connector.Most.Volts);
    }

    /// <summary>IEC 60309-2: the hour of the earth contact and the voltage by colour and contacts.</summary>
    [Theory]
    [InlineData("16 A yellow", 4, 110, 1, true)]
    [InlineData("16 A blue", 6, 230, 1, true)]
    [InlineData("125 A blue", 6, 230, 1, true)]
    [InlineData("32 A blue 4-pin", 9, 230, 3, false)]
    [InlineData("63 A blue 5-pin", 9, 208, 3, true)]
    [InlineData("32 A red 4-pin", 6, 400, 3, false)]
    [InlineData("32 A red", 6, 400, 3, true)]
    [InlineData("125 A red 5-pin", 6, 400, 3, true)]
    public void Industrial(string name, int hour, double volts, int lines, bool hasNeutral)
    {
        var connector = MainsConnectors.Find(name)!;
        Assert.Equal((hour, lines, hasNeutral), (connector.EarthAt, connector.Lines, connector.HasNeutral));
        Assert.True(connector.Takes(ElectricPotential.FromVolts(volts)));
    }

    /// <summary>IEC 60309-2: no range of one colour reaches into that of another.</summary>
    [Theory]
    [InlineData("16 A yellow", 230)]
    [InlineData("16 A blue", 120)]
    [InlineData("16 A blue", 400)]
    [InlineData("32 A red", 230)]
    [InlineData("L21-30", 400)]
    [InlineData("5-15", 230)]
    public void Not_made_for(string name, double volts) => Assert.False(MainsConnectors.Find(name)!.Takes(ElectricPotential.FromVolts(volts)));

    /// <summary>IEC 60320: C13 and C14 10 A, C19 and C20 16 A; in North America 15 A and 20 A.</summary>
    [Theory]
    [InlineData("iec 10 A", 10, 15)]
    [InlineData("iec 16 A", 16, 20)]
    public void Appliance_couplers(string name, double amperes, double inNorthAmerica)
    {
        var connector = MainsConnectors.Find(name)!;
        Assert.Equal((amperes, inNorthAmerica), (connector.Rating.Amperes, connector.RatingInNorthAmerica!.Value.Amperes));
    }

    [Theory]
    [InlineData("")]
    [InlineData("17 A blue")]
    [InlineData("16 A red 3-pin")]
    [InlineData("16 A pink")]
    [InlineData("L99-20")]
    [InlineData("5-17")]
    [InlineData("something else")]
    public void What_there_is_not(string name) => Assert.Null(MainsConnectors.Find(name));
}
