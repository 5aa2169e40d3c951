using System.Globalization;
using UnitsNet;

namespace Advance.Planning;

/// <summary>A tilt in words: <c>2.4° nose down</c>.</summary>
public static class TiltWords
{
    /// <summary>To a tenth of a degree.</summary>
    /// <param name="tilt">Nose down positive; null where nobody knows.</param>
    public static string Of(Angle? tilt)
    {
        if (tilt is not { } known)
        {
            return "an unknown tilt";
        }

        var tenths = Math.Round(Math.Abs(known.Degrees), 1, MidpointRounding.AwayFromZero);
        return tenths == 0 ? "level" : string.Create(CultureInfo.InvariantCulture, $"{tenths:0.#}° nose {(known.Degrees > 0 ? "down" : "up")}");
    }
}
