using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Wording;

namespace Advance.Planning;

/// <summary>Why nobody can tell how a distribution is fed.</summary>
/// <param name="Device">The distribution.</param>
/// <param name="Kind">What is wrong.</param>
/// <param name="Says">The same in words that follow on its name.</param>
/// <param name="RestsOn">The open questions behind it.</param>
/// <param name="At">Where it was written.</param>
public sealed record FeedFault(Device Device, FeedFaultKind Kind, Words Says, Doubts RestsOn, Mark At);
