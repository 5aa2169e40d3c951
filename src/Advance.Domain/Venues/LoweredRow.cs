using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Venues;

/// <summary>Something that is lowered or taken down in wind.</summary>
/// <param name="What">A stack, a position or a thing by its name, or a cloth in words.</param>
/// <param name="From">The gust from which it must be down; null where that follows from what it stands.</param>
/// <param name="Takes">How long that takes.</param>
/// <param name="By">Who does it; null where nobody says.</param>
/// <param name="At">Where it was written.</param>
public sealed record LoweredRow(string What, Given<Speed>? From, Given<Duration> Takes, Given<string>? By, Mark At);
