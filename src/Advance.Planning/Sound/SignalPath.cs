using Advance.Domain.Facts;

namespace Advance.Planning;

/// <summary>The way of a signal to a unit.</summary>
/// <param name="Links">From the desk, or as far back as it could be followed, to the unit.</param>
/// <param name="End">Where it comes from.</param>
/// <param name="EndsAt">The device or box where following it ended.</param>
/// <param name="RestsOn">The open questions on the way.</param>
public sealed record SignalPath(IReadOnlyList<Link> Links, PathEnd End, string EndsAt, Doubts RestsOn);
