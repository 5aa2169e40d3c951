using Advance.Domain.Facts;

namespace Advance.Domain.Gigs;

/// <summary>When a show state is. A state may have several rows.</summary>
/// <param name="State">Which.</param>
/// <param name="Time">From when to when.</param>
/// <param name="At">Where it was written.</param>
public sealed record ShowStateRow(ShowState State, Given<MomentRange> Time, Mark At);
