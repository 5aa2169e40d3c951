using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Gigs;

/// <summary>A reading from the site, to stand beside what was worked out.</summary>
/// <param name="Where">Address of the figure it belongs to.</param>
/// <param name="Value">As read.</param>
/// <param name="By">Who read it; empty where not said.</param>
/// <param name="Time">When; empty where not said.</param>
/// <param name="At">Where it was written.</param>
public sealed record Measurement(string Where, IQuantity Value, string By, string Time, Mark At);
