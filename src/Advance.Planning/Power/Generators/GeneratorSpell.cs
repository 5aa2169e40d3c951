using Advance.Domain.Facts;
using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>A time in which one show state holds, and what a generator does in it.</summary>
/// <param name="Power">What its service gives in that state.</param>
/// <param name="When">From when to when.</param>
/// <param name="Time">How long.</param>
/// <param name="Share">Real power, of what the engine gives.</param>
/// <param name="SureShare">Real power of our own loads alone, of what the engine gives.</param>
/// <param name="AnHour">What it burns in an hour; unknown where nobody gave a table, or it ends below.</param>
/// <param name="Burnt">What it burns in that time.</param>
public sealed record GeneratorSpell(
    StatePower Power, MomentRange When, Figure<Duration> Time, Figure<Ratio> Share, Figure<Ratio> SureShare, Figure<Volume> AnHour, Figure<Volume> Burnt);
