using Advance.Domain.Figures;

namespace Advance.Handbook;

/// <summary>The National Electrical Code of the United States (NFPA 70), with the clauses numbered as in the edition of 2020.</summary>
public static class Nec
{
    private const string Title = "NEC (NFPA 70)";
    private const string Edition = "clauses of 2020";

    /// <summary>Branch circuits and feeders: a continuous load counts 125 %.</summary>
    public static readonly Publication ContinuousLoad = new(Title, Edition, "210.19(A)(1), 210.20(A), 215.2(A)(1), 215.3", Standing.Read);

    /// <summary>Direct-current resistance of conductors at 75 °C.</summary>
    public static readonly Publication Table8 = new(Title, Edition, "Chapter 9, Table 8", Standing.Read);

    /// <summary>Alternating-current resistance and reactance; its note 2 gives the effective impedance R cos φ + X sin φ.</summary>
    public static readonly Publication Table9 = new(Title, Edition, "Chapter 9, Table 9, note 2", Standing.Read);

    /// <summary>Current-carrying capacity of flexible cords.</summary>
    public static readonly Publication Table400A1 = new(Title, Edition, "Table 400.5(A)(1)", Standing.Read);

    /// <summary>Current-carrying capacity of portable power cables; formerly Table 400.5(B).</summary>
    public static readonly Publication Table400A2 = new(Title, Edition, "Table 400.5(A)(2)", Standing.Read);

    /// <summary>More than three loaded conductors in a cord or cable; alike in 310.15(C)(1), formerly 310.15(B)(3)(a).</summary>
    public static readonly Publication Table400A3 = new(Title, Edition, "Table 400.5(A)(3), Table 310.15(C)(1)", Standing.Read);

    /// <summary>Air that is not of 30 °C.</summary>
    public static readonly Publication Table310Ambient = new(Title, Edition, "Table 310.15(B)(1)", Standing.Read);

    /// <summary>Current-carrying capacity of conductors in cable or raceway, by which terminations are judged; formerly Table 310.15(B)(16).</summary>
    public static readonly Publication Table310 = new(Title, Edition, "Table 310.16", Standing.Read);

    /// <summary>The lowest temperature class of conductor and terminations decides.</summary>
    public static readonly Publication TerminationTemperature = new(Title, Edition, "110.14(C)", Standing.Read);

    /// <summary>Cords made up from listed parts: 16 AWG and larger on branch circuits of 20 A; listed cord sets and supply cords as listed.</summary>
    public static readonly Publication CordsOnBranchCircuits = new(Title, Edition, "240.5(B)(4)", Standing.Read);

    /// <summary>Receptacles of 15 A or 20 A on a branch circuit of 20 A that feeds several.</summary>
    public static readonly Publication Receptacles = new(Title, Edition, "Table 210.21(B)(3)", Standing.FromMemory);

    /// <summary>The neutral of single-pole feeders to phase-control dimmers counts 130 %.</summary>
    public static readonly Publication DimmerNeutral = new(Title, Edition, "520.53(O)(2)", Standing.Read);
}
