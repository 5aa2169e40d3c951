namespace Advance.Planning;

/// <summary>A current that returns through a neutral.</summary>
/// <param name="Draw">What draws it.</param>
/// <param name="Line">The line it comes by, counted from 0; null where nobody knows which.</param>
/// <param name="Facts">Its angle and its harmonics.</param>
internal sealed record NeutralTerm(WiredDraw Draw, int? Line, NeutralFacts Facts)
{
    /// <summary>Amperes; 0 where nobody knows.</summary>
    public double Amperes => Draw.Current.Value?.Amperes ?? 0;

    /// <summary>Whether loads of this kind may be added before phasors are.</summary>
    public (int? Line, double? Lag, double Within, double First, string Orders) Alike => (
        Line, Facts.Lag?.Value?.Radians, Facts.Within.Value!.Value.Radians, Facts.Spectrum.FundamentalOf(1), string.Join('/', Facts.Harmonics.Select(one => $"{one.Order}:{one.Share.Value!.Value.Percent:R}")));
}
