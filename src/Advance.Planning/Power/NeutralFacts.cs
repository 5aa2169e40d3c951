using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>
/// What counts of a load in a neutral: its angle, or how far that may lie to either side, and its harmonics. A third harmonic that nobody gave
/// is the company's; higher ones that nobody gave stay in the fundamental, which with its third is then taken as larger than it is.
/// </summary>
/// <param name="Lag">Displacement angle; null where nobody knows.</param>
/// <param name="Within">How far it may lag or lead at most.</param>
/// <param name="Harmonics">From the third on.</param>
/// <param name="IsAssumed">Whether the third harmonic is nobody's word.</param>
internal sealed record NeutralFacts(Figure<Angle>? Lag, Figure<Angle> Within, IReadOnlyList<Harmonic> Harmonics, bool IsAssumed)
{
    /// <summary>The harmonics for the handbook; none where one is unknown.</summary>
    public Spectrum Spectrum { get; } = Harmonics.Aggregate(Spectrum.Sine, (sum, one) => sum.With(one.Order, one.Share.Value?.DecimalFractions ?? 0));

    /// <summary>Of a load; of what nobody knows, where there is none.</summary>
    public static NeutralFacts Of(PowerLoad? load, Policies policies)
    {
        var third = load?.ThirdHarmonic is { Value: not null } known ? known : Figure.Policy("unknown-third-harmonic", Ratio.FromPercent(policies.UnknownThirdHarmonic));
        IReadOnlyList<Harmonic> harmonics = [new(3, third), .. load?.HigherHarmonics ?? []];
        var lag = load?.Lag is { Value: not null } said ? said : null;
        return new NeutralFacts(lag, lag ?? WithinOf(load, harmonics, policies), harmonics, load?.ThirdHarmonic?.Value is null);
    }

    // The displacement power factor is at least the power factor without what the harmonics take off it.
    private static Figure<Angle> WithinOf(PowerLoad? load, IReadOnlyList<Harmonic> harmonics, Policies policies) => load?.PowerFactor is { Value: not null } factor
        ? Sum.Of("how far it may lag or lead, from its power factor", "w = acos(min(1, k · √(1 + Σ (hᵢ / 100)²)))", CircuitTheory.Phasors)
            .Put("k", factor)
            .PutAll("hᵢ", harmonics.Select(one => LegSum.Percent(one.Share)))
            .Gives((real, shares) => Angle.FromRadians(Math.Acos(Math.Min(1, real * Math.Sqrt(1 + shares.Values.Sum(share => share / 100 * (share / 100)))))))
        : Figure.Policy("unknown-angle", policies.UnknownAngle);

    /// <summary>All open questions behind them.</summary>
    public Doubts RestsOn => Harmonics.Aggregate(Within.RestsOn, (sum, one) => sum.With(one.Share.RestsOn));
}
