namespace Advance.Domain.Facts;

/// <summary>Ports of a named device: <c>DRIVE out 1-2</c>, <c>PD1 outlet 3</c>, or only <c>DRIVE</c> where the rest is to be worked out.</summary>
/// <param name="Device">The device's name.</param>
/// <param name="Kind">Which row of connectors; null where left to be worked out.</param>
/// <param name="Numbers">Which of them; null where left to be worked out, never there without a kind.</param>
public sealed record PortRange(string Device, PortKind? Kind = null, NumberRange? Numbers = null);
