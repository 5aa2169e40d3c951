namespace Advance.Handbook;

/// <summary>
/// What a conductor's insulation stands in service; the number is °C. Terminations and connectors may stand less, and then they decide.
/// A cable that does not say is of the lowest class.
/// </summary>
public enum TemperatureClass
{
    /// <summary>60 °C rubber, such as H07RN-F; in North America every cord that is not marked otherwise.</summary>
    Sixty = 60,

    /// <summary>75 °C: North American portable power cable.</summary>
    SeventyFive = 75,

    /// <summary>90 °C thermosetting.</summary>
    Ninety = 90,
}
