namespace Advance.Planning;

/// <summary>What comes out at the end of each lead as picked.</summary>
/// <param name="Figures">Voltage drops, lead by lead and in all.</param>
public sealed record VoltagePlan(IReadOnlyList<Stated> Figures);
