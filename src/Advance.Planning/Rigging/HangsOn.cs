using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What a pick hangs on, and how high: a point of the venue, or the hook of a bridle.</summary>
/// <param name="Name">The point's, or the bridle's.</param>
/// <param name="Height">Above the floor.</param>
/// <param name="RestsOn">The open questions about that height.</param>
public sealed record HangsOn(string Name, Length Height, Doubts RestsOn);
