using UnitsNet;

namespace Advance.Domain.Stocks;

/// <summary>What a truss on two supports carries over one span, by its maker's table.</summary>
/// <param name="Span">Between the supports.</param>
/// <param name="Uniform">Spread evenly, all together; null where not said.</param>
/// <param name="Centre">In the middle; null where not said.</param>
public sealed record SpanRow(Length Span, Mass? Uniform, Mass? Centre);
