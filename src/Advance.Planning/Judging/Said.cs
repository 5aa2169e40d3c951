using Advance.Domain.Wording;

namespace Advance.Planning;

/// <summary>How a rule puts a finding.</summary>
/// <param name="Says">First line: measured against allowed. It stands alone.</param>
/// <param name="Cure">What would put it right.</param>
/// <param name="Figures">What it rests on, for whoever accepts it.</param>
public sealed record Said(Words Says, Words Cure, Words Figures);
