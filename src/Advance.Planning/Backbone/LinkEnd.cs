namespace Advance.Planning;

/// <summary>Where a connection ends: a connector of a device, and where that device stands.</summary>
/// <param name="Port">The connector.</param>
/// <param name="Connector">What plugs into it, as the stock names it: <c>xlr-3</c>, <c>16 A blue</c>; empty where nobody knows.</param>
/// <param name="Spot">Where the device stands; null where nobody knows.</param>
/// <param name="Height">How far the connector hangs or stands above the stage or the floor there, in metres; 0 for what stands on it.</param>
public sealed record LinkEnd(Port Port, string Connector, Spot? Spot, double Height = 0);
