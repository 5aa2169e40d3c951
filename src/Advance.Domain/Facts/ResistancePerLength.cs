using UnitsNet;

namespace Advance.Domain.Facts;

/// <summary>Resistance (or reactance, or impedance) of one conductor per length, or voltage drop per ampere and length: the same unit.</summary>
/// <param name="OhmsPerMetre">In ohm per metre, 0 or more.</param>
public readonly record struct ResistancePerLength(double OhmsPerMetre) : IComparable<ResistancePerLength>
{
    private const double MetresInThousandFeet = 304.8;

    /// <summary>From ohm per kilometre, as in IEC 60228; the same number as milliohm per metre.</summary>
    public static ResistancePerLength FromOhmsPerKilometre(double ohms) => new(ohms / 1000);

    /// <summary>From ohm per 1000 ft, as in the NEC.</summary>
    public static ResistancePerLength FromOhmsPerThousandFeet(double ohms) => new(ohms / MetresInThousandFeet);

    /// <summary>From millivolt per ampere and metre, as in BS 7671.</summary>
    public static ResistancePerLength FromMillivoltsPerAmpereMetre(double millivolts) => new(millivolts / 1000);

    /// <summary>Of so many metres of it.</summary>
    public ElectricResistance Of(Length length) => ElectricResistance.FromOhms(OhmsPerMetre * length.Meters);

    /// <summary>The smaller comes first.</summary>
    public int CompareTo(ResistancePerLength other) => OhmsPerMetre.CompareTo(other.OhmsPerMetre);
}
