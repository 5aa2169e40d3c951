namespace Advance.Domain.Venues;

/// <summary>Whose rules an installation follows.</summary>
public enum WiringRules
{
    /// <summary><c>IEC</c>: IEC 60364 and what countries made of it.</summary>
    Iec,

    /// <summary><c>NEC</c>: the National Electrical Code, NFPA 70.</summary>
    Nec,
}
