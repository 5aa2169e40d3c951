using Advance.Domain.Facts;

namespace Advance.Domain.Gigs;

/// <summary>The network that units with a control port are on.</summary>
/// <param name="Subnet">Its addresses.</param>
public sealed record Network(Given<Subnet> Subnet);
