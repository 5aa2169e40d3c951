using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Handbook;

/// <summary>What a mains connector is made for.</summary>
/// <param name="Name">As the trade calls it: <c>32 A red</c>, <c>L21-30</c>, <c>iec 10 A</c>.</param>
/// <param name="Lines">How many lines it has, 1 to 3.</param>
/// <param name="HasNeutral">Whether it has a neutral contact.</param>
/// <param name="Least">The lowest voltage that it is made for, between its lines or, with one line, from line to neutral, V.</param>
/// <param name="Most">The highest.</param>
/// <param name="Rating">What each contact carries by IEC rules.</param>
/// <param name="RatingInNorthAmerica">What it carries by the rules of North America; null where they know no other.</param>
/// <param name="Source">Where that is written.</param>
public sealed record MainsConnector(
    string Name, int Lines, bool HasNeutral, ElectricPotential Least, ElectricPotential Most, ElectricCurrent Rating, ElectricCurrent? RatingInNorthAmerica, Publication Source)
{
    /// <summary>The hour at which the earth contact stands, seen from the front of the outlet with the keyway at six; null where that says nothing.</summary>
    public int? EarthAt { get; init; }

    /// <summary>Contacts that carry current or protect; a pilot is not counted.</summary>
    public int Contacts => Lines + (HasNeutral ? 1 : 0) + 1;

    /// <summary>Whether a voltage lies in its range.</summary>
    /// <param name="volts">Between lines, or with one line from line to neutral.</param>
    public bool Takes(ElectricPotential volts) => volts >= Least && volts <= Most;
}
