using UnitsNet;

namespace Advance.Handbook;

/// <summary>The longest that a fault to earth may stand before it is disconnected. Source: <see cref="Bs7671.Table411"/>.</summary>
public static class DisconnectionTimes
{
    /// <summary>A circuit with outlets is a final circuit of the table up to this rating, A.</summary>
    public const double MostWithOutlets = 63;

    /// <summary>A circuit that feeds only what is wired in is a final circuit of the table up to this rating, A.</summary>
    public const double MostWiredIn = 32;

    /// <summary>Final circuits, alternating current: from 0.8 s to 0.04 s; null up to 50 V, where shock asks for none.</summary>
    /// <param name="system">How the supply is earthed.</param>
    /// <param name="toEarth">U₀, nominal voltage of a line to earth, V.</param>
    public static Duration? Final(EarthingSystem system, ElectricPotential toEarth)
    {
        var isTN = system == EarthingSystem.TN;
        return toEarth.Volts switch
        {
            <= 50 => null,
            <= 120 => Duration.FromSeconds(isTN ? 0.8 : 0.3),
            <= 230 => Duration.FromSeconds(isTN ? 0.4 : 0.2),
            <= 400 => Duration.FromSeconds(isTN ? 0.2 : 0.07),
            _ => Duration.FromSeconds(isTN ? 0.1 : 0.04),
        };
    }

    /// <summary>Distribution circuits, and circuits larger than those of the table: 5 s, or 1 s in a TT system.</summary>
    /// <param name="system">How the supply is earthed.</param>
    public static Duration Distribution(EarthingSystem system) => Duration.FromSeconds(system == EarthingSystem.TN ? 5 : 1);
}
