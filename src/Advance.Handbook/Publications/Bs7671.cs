using Advance.Domain.Figures;

namespace Advance.Handbook;

/// <summary>
/// BS 7671, requirements for electrical installations. The tables of appendix 4 bear these numbers since 2008 (from memory); the other clauses are
/// numbered as in 2018 with its second amendment of 2022.
/// </summary>
public static class Bs7671
{
    private const string Title = "BS 7671";
    private const string Edition = "2008 and later";
    private const string Clauses = "2018 + A2:2022";

    /// <summary>Current-carrying capacity of 60 °C flexible cords, used below 4 mm².</summary>
    public static readonly Publication Table4F3A = new(Title, Edition, "Table 4F3A", Standing.Read);

    /// <summary>Voltage drop of 60 °C flexible cords, used below 4 mm².</summary>
    public static readonly Publication Table4F3B = new(Title, Edition, "Table 4F3B", Standing.Read);

    /// <summary>Current-carrying capacity of 60 °C rubber flexible cables, from 4 mm².</summary>
    public static readonly Publication Table4F1A = new(Title, Edition, "Table 4F1A", Standing.Read);

    /// <summary>Voltage drop of 60 °C rubber flexible cables, from 4 mm².</summary>
    public static readonly Publication Table4F1B = new(Title, Edition, "Table 4F1B", Standing.Read);

    /// <summary>The most that voltage may drop.</summary>
    public static readonly Publication Table4Ab = new(Title, Edition, "Table 4Ab", Standing.Read);

    /// <summary>Current-carrying capacity of 90 °C thermosetting flexible cables, from 4 mm².</summary>
    public static readonly Publication Table4F2A = new(Title, Edition, "Table 4F2A", Standing.Read);

    /// <summary>Rating factors for air that is not of 30 °C.</summary>
    public static readonly Publication Table4B1 = new(Title, Edition, "Table 4B1", Standing.Read);

    /// <summary>Rating factors for circuits that lie together.</summary>
    public static readonly Publication Table4C1 = new(Title, Edition, "Table 4C1", Standing.Read);

    /// <summary>Cable loaded to 30 % of its grouped rating is left out of the group.</summary>
    public static readonly Publication LightlyLoaded = new(Title, Edition, "523.5", Standing.Read);

    /// <summary>Flexible cable on a reeling drum.</summary>
    public static readonly Publication Drums = new(Title, Edition, "notes to Table 4F1A", Standing.Read);

    /// <summary>The longest that a fault may stand.</summary>
    public static readonly Publication Table411 = new(Title, Clauses, "411.3.2, Table 41.1", Standing.Read);

    /// <summary>The most earth fault loop impedance, with the minimum voltage factor of 0.95.</summary>
    public static readonly Publication LoopImpedance = new(Title, Clauses, "411.4.4", Standing.Read);

    /// <summary>The most earth fault loop impedance of circuit-breakers.</summary>
    public static readonly Publication Table413 = new(Title, Clauses, "Table 41.3", Standing.Read);

    /// <summary>The most earth fault loop impedance of fuses, for 0.4 s and for 5 s.</summary>
    public static readonly Publication FuseLoops = new(Title, Clauses, "Tables 41.2 and 41.4", Standing.Read);

    /// <summary>TT systems: resistance times rated residual current is at most 50 V.</summary>
    public static readonly Publication EarthElectrode = new(Title, Clauses, "411.5.3", Standing.Read);

    /// <summary>What a conductor stands: k²S² is at least I²t.</summary>
    public static readonly Publication Table431 = new(Title, Clauses, "434.5.2, Table 43.1", Standing.Read);

    /// <summary>A device breaks the largest current that may come.</summary>
    public static readonly Publication BreakingCapacity = new(Title, Clauses, "434.5.1", Standing.FromMemory);

    /// <summary>Least section of protective conductors.</summary>
    public static readonly Publication Table547 = new(Title, Clauses, "Table 54.7", Standing.Read);

    /// <summary>Circuits with high protective-conductor currents.</summary>
    public static readonly Publication ProtectiveConductorCurrent = new(Title, Clauses, "543.7.1", Standing.Read);

    /// <summary>Leakage in normal use is at most 30 % of the rated residual current.</summary>
    public static readonly Publication Leakage = new(Title, Clauses, "531.3.2", Standing.Read);

    /// <summary>Types of residual current device.</summary>
    public static readonly Publication ResidualTypes = new(Title, Clauses, "531.3.3", Standing.Read);

    /// <summary>Selectivity of residual current devices in a row.</summary>
    public static readonly Publication ResidualSelectivity = new(Title, Clauses, "536.4.1.4", Standing.FromMemory);
}
