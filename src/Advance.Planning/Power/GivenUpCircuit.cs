using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>A circuit fixed by hand that was not kept.</summary>
/// <param name="Row">As written.</param>
/// <param name="Reason">Why.</param>
/// <param name="What">What could not be linked, for that reason; where it hangs instead, where there was no outlet; else null.</param>
public sealed record GivenUpCircuit(CircuitRow Row, GivenUpReason Reason, string? What = null);
