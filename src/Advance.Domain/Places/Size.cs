using UnitsNet;

namespace Advance.Domain.Places;

/// <summary>What a thing measures: <c>8 x 5 m</c>, <c>2 x 1 x 0.2 m</c>. None is negative.</summary>
/// <param name="Width">The first as written: across the stage, or the longer side of a thing in stock.</param>
/// <param name="Depth">The second as written.</param>
/// <param name="Height">The third; null where only two were written.</param>
public readonly record struct Size(Length Width, Length Depth, Length? Height = null);
