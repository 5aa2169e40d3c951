using Advance.Domain.Facts;

namespace Advance.Domain.Gigs;

/// <summary>Fixtures of one kind in one position.</summary>
/// <param name="Numbers">Their names on the desk.</param>
/// <param name="Item">Their kind.</param>
/// <param name="Position">Name of the position, with its side for a pair: <c>LX SR</c>.</param>
/// <param name="Mode">The maker's mode; empty where not said.</param>
/// <param name="Address">Universe and first slot of the first of them, the others follow on; null where it is worked out.</param>
/// <param name="Purpose">What it lights.</param>
/// <param name="At">Where it was written.</param>
public sealed record FixtureRow(
    NumberRange Numbers, Given<string> Item, string Position, string Mode, Given<ControlAddress>? Address, string Purpose, Mark At);
