using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Gigs;

/// <summary>What somebody wants set on outputs of a processor. What is left out is worked out.</summary>
/// <param name="Numbers">Which outputs.</param>
/// <param name="Gain">Null where left out.</param>
/// <param name="Polarity">Null where left out.</param>
/// <param name="Delay">Null where left out.</param>
/// <param name="HighPass">Null where left out.</param>
/// <param name="LowPass">Null where left out.</param>
/// <param name="Note">Anything else.</param>
/// <param name="At">Where it was written.</param>
public sealed record OutputRow(
    NumberRange Numbers,
    Given<Level>? Gain,
    Given<Polarity>? Polarity,
    Given<Duration>? Delay,
    Given<Frequency>? HighPass,
    Given<Frequency>? LowPass,
    string Note,
    Mark At);
