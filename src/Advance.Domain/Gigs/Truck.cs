using Advance.Domain.Facts;

namespace Advance.Domain.Gigs;

/// <summary>A vehicle.</summary>
/// <param name="Name">Its key.</param>
/// <param name="Item">Its kind.</param>
/// <param name="Driver">Who drives; null where not said.</param>
/// <param name="Parks">Where it stands; null where not said.</param>
/// <param name="At">Where it was written.</param>
public sealed record Truck(string Name, Given<string> Item, Given<string>? Driver, Given<string>? Parks, Mark At);
