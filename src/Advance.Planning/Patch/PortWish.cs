using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>One line or mix that wants a port.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="Act">The act it is up for; null for every act.</param>
/// <param name="Number">Its channel or mix.</param>
/// <param name="Fixed">The port somebody fixed by hand: obeyed or refused, never moved elsewhere; null where it is free to choose.</param>
internal sealed record PortWish(Address Address, string? Act, int Number, Port? Fixed);
