using Advance.Domain.Facts;
using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>How much a generator burns over its hours, and how long a full tank lasts.</summary>
/// <param name="Needed">All hours together, with the margin of the company.</param>
/// <param name="DryAt">
/// When a tank that was full at the first hour is used up, with the same margin, from the first midnight of the day; null where it lasts.
/// </param>
/// <param name="RefuelIn">The last time before that in which nobody performs; null where there is none, or none is needed.</param>
public sealed record GeneratorFuel(Figure<Volume> Needed, Figure<Duration>? DryAt, GeneratorSpell? RefuelIn)
{
    /// <summary>When it runs dry, to the minute before; null where the tank lasts or nobody knows.</summary>
    public Moment? Dry => DryAt?.Value is { } time && (int)Math.Floor(time.Minutes) is var minutes and >= 0 ? new Moment(minutes) : null;
}
