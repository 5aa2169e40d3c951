using Advance.Domain.Facts;

namespace Advance.Domain.Gigs;

/// <summary>A circuit fixed by hand.</summary>
/// <param name="Distribution">The distribution's name.</param>
/// <param name="Number">Which of its circuits; null where it is worked out.</param>
/// <param name="Feeds">What hangs on it.</param>
/// <param name="Note">Anything else.</param>
/// <param name="At">Where it was written.</param>
public sealed record CircuitRow(string Distribution, Given<int>? Number, string Feeds, string Note, Mark At);
