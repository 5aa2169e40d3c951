using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>A circuit fixed by hand that was not kept.</summary>
/// <param name="Row">As written.</param>
/// <param name="Names">Whether it names something that draws current; then that hangs elsewhere.</param>
/// <param name="Instead">Where it hangs; null for nowhere.</param>
public sealed record GivenUpCircuit(CircuitRow Row, bool Names, string? Instead);
