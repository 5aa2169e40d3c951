using Advance.Domain.Facts;

namespace Advance.Domain.Gigs;

/// <summary>A loose thing to bring.</summary>
/// <param name="Item">Its kind.</param>
/// <param name="Count">How many, at least 1.</param>
/// <param name="From">Whose; null means the shop's.</param>
/// <param name="Why">What for.</param>
/// <param name="At">Where it was written.</param>
public sealed record Extra(string Item, Given<int> Count, Given<Owner>? From, string Why, Mark At);
