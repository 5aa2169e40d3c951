using System.Globalization;
using UnitsNet;

namespace Advance.Handbook;

/// <summary>Mains connectors by the names that the trade has for them.</summary>
public static class MainsConnectors
{
    private static readonly ElectricPotential Low = ElectricPotential.FromVolts(100);
    private static readonly ElectricPotential LowMost = ElectricPotential.FromVolts(130);
    private static readonly ElectricPotential Home = ElectricPotential.FromVolts(200);
    private static readonly ElectricPotential HomeMost = ElectricPotential.FromVolts(250);

    // Configurations by the number before the dash: lines, neutral, lowest and highest voltage.
    private static readonly Dictionary<string, (int Lines, bool HasNeutral, double Least, double Most)> Nema = new(StringComparer.Ordinal)
    {
        ["5"] = (1, true, 100, 125),
        ["6"] = (2, false, 200, 250),
        ["14"] = (2, true, 200, 250),
        ["15"] = (3, false, 200, 250),
        ["21"] = (3, true, 200, 208),
        ["22"] = (3, true, 440, 480),
    };

    private static readonly Dictionary<string, MainsConnector> Named = new[]
    {
        new MainsConnector("iec 10 A", 1, true, Low, HomeMost, Amperes(10), Amperes(15), ConnectorStandards.Iec60320),
        new MainsConnector("iec 16 A", 1, true, Low, HomeMost, Amperes(16), Amperes(20), ConnectorStandards.Iec60320),
        new MainsConnector("13 A domestic", 1, true, Home, HomeMost, Amperes(13), null, ConnectorStandards.Bs1363),
        new MainsConnector("16 A domestic", 1, true, Home, HomeMost, Amperes(16), null, ConnectorStandards.Cee7),
        new MainsConnector("locking mains 16 A", 1, true, Low, HomeMost, Amperes(16), Amperes(20), Domain.Figures.Publication.CommonPractice),
        new MainsConnector("locking mains 20 A", 1, true, Low, HomeMost, Amperes(20), null, Domain.Figures.Publication.CommonPractice),
        new MainsConnector("locking mains 32 A", 1, true, Low, HomeMost, Amperes(32), null, Domain.Figures.Publication.CommonPractice),
    }.ToDictionary(connector => connector.Name, StringComparer.Ordinal);

    /// <summary>
    /// What a name stands for; null where it is none of these. <c>16 A blue</c>, <c>63 A red</c>, <c>32 A red 4-pin</c>, <c>16 A yellow</c> are of
    /// IEC 60309 (blue and yellow with three contacts and red with five where nothing is said); <c>L21-30</c> and <c>5-15</c> of NEMA; <c>iec 10 A</c>
    /// the coupler C13 and C14, <c>iec 16 A</c> C19 and C20; <c>13 A domestic</c> and <c>16 A domestic</c> the wall sockets of Britain and of the
    /// continent; <c>locking mains 20 A</c> by common practice.
    /// </summary>
    public static MainsConnector? Find(string name) => Named.GetValueOrDefault(name) ?? Industrial(name) ?? American(name);

    private static MainsConnector? Industrial(string name)
    {
        var words = name.Split(' ');
        if (words.Length is < 3 or > 4 || words[1] != "A" || !int.TryParse(words[0], NumberStyles.None, CultureInfo.InvariantCulture, out var amperes) || amperes is not (16 or 32 or 63 or 125))
        {
            return null;
        }

        var pins = words.Length == 3 ? (words[2] == "red" ? 5 : 3) : words[3] switch { "3-pin" => 3, "4-pin" => 4, "5-pin" => 5, _ => 0 };
        return (words[2], pins) switch
        {
            ("yellow", 3) => Of(1, true, Low, LowMost, 4),
            ("yellow", 4) => Of(3, false, Low, LowMost, 4),
            ("yellow", 5) => Of(3, true, Low, LowMost, 4),
            ("blue", 3) => Of(1, true, Home, HomeMost, 6),
            ("blue", 4) => Of(3, false, Home, HomeMost, 9),
            ("blue", 5) => Of(3, true, Home, HomeMost, 9),
            ("red", 4) => Of(3, false, ElectricPotential.FromVolts(380), ElectricPotential.FromVolts(415), 6),
            ("red", 5) => Of(3, true, ElectricPotential.FromVolts(346), ElectricPotential.FromVolts(415), 6),
            _ => null,
        };

        MainsConnector Of(int lines, bool hasNeutral, ElectricPotential least, ElectricPotential most, int hour) =>
            new(name, lines, hasNeutral, least, most, Amperes(amperes), American60309(amperes), ConnectorStandards.Iec60309) { EarthAt = hour };
    }

    private static MainsConnector? American(string name)
    {
        var parts = name.Split('-');
        var isLocking = name.StartsWith('L');
        if (parts.Length != 2 || !Nema.TryGetValue(isLocking ? parts[0][1..] : parts[0], out var found) || !int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var amperes)
            || amperes is not (15 or 20 or 30 or 50))
        {
            return null;
        }

        return new(
            name, found.Lines, found.HasNeutral, ElectricPotential.FromVolts(found.Least), ElectricPotential.FromVolts(found.Most), Amperes(amperes), Amperes(amperes), ConnectorStandards.NemaWd6);
    }

    // The same shells count there for 20, 30, 60 and 100 A; all but the 60 A from memory.
    private static ElectricCurrent American60309(int amperes) => Amperes(amperes switch { 16 => 20, 32 => 30, 63 => 60, _ => 100 });

    private static ElectricCurrent Amperes(double amperes) => ElectricCurrent.FromAmperes(amperes);
}
