using Advance.Domain.Gigs;
using UnitsNet;

namespace Advance.Domain.Stocks;

/// <summary>What a sling is rated for when it is laid in one way, as its label says.</summary>
/// <param name="Hitch">How it is laid.</param>
/// <param name="Rating">Laid so.</param>
public sealed record HitchRow(SlingHitch Hitch, Mass Rating);
