using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Stocks;

/// <summary>A hole of a flying frame.</summary>
/// <param name="Name">The maker's name for it.</param>
/// <param name="Behind">How far behind the front pin; negative ahead of it.</param>
/// <param name="Above">How far above the front pin.</param>
public sealed record FrameHole(string Name, Given<Length> Behind, Given<Length> Above);
