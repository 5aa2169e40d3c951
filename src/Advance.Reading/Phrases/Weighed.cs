using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Reading.Phrases;

/// <summary>A weight and how it is known.</summary>
/// <param name="Weight">The weight.</param>
/// <param name="How">How it is known; stated where nothing was said.</param>
internal readonly record struct Weighed(Mass Weight, Known How);
