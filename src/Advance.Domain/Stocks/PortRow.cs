using Advance.Domain.Facts;

namespace Advance.Domain.Stocks;

/// <summary>A row of like connectors.</summary>
/// <param name="Port">In, out or link.</param>
/// <param name="Count">How many, numbered from 1.</param>
/// <param name="Signal">What runs through: <c>mic-line</c>, <c>line</c>, <c>network</c>, <c>lighting-control</c>.</param>
/// <param name="Connector">Which plug fits.</param>
/// <param name="HandsOn">For a link: <c>full</c> or <c>high-passed</c>; empty where it does not apply.</param>
/// <param name="At">Where it was written.</param>
public sealed record PortRow(PortKind Port, int Count, string Signal, string Connector, string HandsOn, Mark At);
