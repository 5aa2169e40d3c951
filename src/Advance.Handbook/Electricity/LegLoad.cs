using UnitsNet;

namespace Advance.Handbook;

/// <summary>A load on one leg and neutral, or between two legs.</summary>
/// <param name="Leg">From 0.</param>
/// <param name="Return">The other leg; null for the neutral.</param>
/// <param name="Rms">True root mean square with all harmonics.</param>
/// <param name="Lag">
/// How far the fundamental current lags its voltage (the displacement angle, not the arc cosine of the true power factor); negative where it
/// leads; null where nobody knows.
/// </param>
/// <param name="Harmonics">What is in it beside the fundamental.</param>
public sealed record LegLoad(int Leg, int? Return, ElectricCurrent Rms, Angle? Lag, Spectrum Harmonics)
{
    /// <summary>How far it may lag or lead at most where its angle is unknown; half a turn where nobody knows that either.</summary>
    public Angle Within { get; init; } = Angle.FromRadians(Math.PI);

    /// <summary>How much of it is of one order, A.</summary>
    internal double Amplitude(int order) => Harmonics.FundamentalOf(Rms.Amperes) * Harmonics.Share(order);
}
