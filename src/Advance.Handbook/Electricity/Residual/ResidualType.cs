namespace Advance.Handbook;

/// <summary>
/// Which residual currents a device sees; each sees all that those before it see. Source: <see cref="Bs7671.ResidualTypes"/>.
/// </summary>
public enum ResidualType
{
    /// <summary>Sinusoidal alternating current only: not behind electronics.</summary>
    AC,

    /// <summary>Also pulsating direct current, with up to 6 mA smooth: single-phase electronics.</summary>
    A,

    /// <summary>Also mixed frequencies, with up to 10 mA smooth: single-phase inverters.</summary>
    F,

    /// <summary>Also smooth direct current: three-phase inverters and rectifiers.</summary>
    B,
}
