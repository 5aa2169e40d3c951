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
}
