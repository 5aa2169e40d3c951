using Advance.Domain.Facts;

namespace Advance.Domain.Gigs;

/// <summary>A structure and its bond.</summary>
/// <param name="Structure">Deck, truss, tower, barrier.</param>
/// <param name="To">Where its bonding conductor goes.</param>
/// <param name="At">Where it was written.</param>
public sealed record BondRow(string Structure, Given<string> To, Mark At);
