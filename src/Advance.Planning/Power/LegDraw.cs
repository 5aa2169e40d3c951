using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>One current on a leg, as far as it can be added to others as a phasor.</summary>
/// <param name="Current">True root mean square.</param>
/// <param name="Lag">How far its fundamental lags the voltage; null where nobody knows.</param>
/// <param name="ThirdHarmonic">As a share of the fundamental; null where nobody knows.</param>
internal readonly record struct LegDraw(Figure<ElectricCurrent> Current, Figure<Angle>? Lag, Figure<Ratio>? ThirdHarmonic)
{
    /// <summary>Whether both are known, without which only its magnitude can be added.</summary>
    public bool IsPhasor => Lag?.Value is not null && ThirdHarmonic?.Value is not null;

    /// <summary>A current of which nothing else is known.</summary>
    public static LegDraw Plain(Figure<ElectricCurrent> current) => new(current, null, null);

    /// <summary>A current of a load.</summary>
    public static LegDraw Of(PowerLoad load, Figure<ElectricCurrent> current) => new(current, load.Lag, load.ThirdHarmonic);
}
