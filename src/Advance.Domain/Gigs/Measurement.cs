using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Gigs;

/// <summary>A reading from the site, to stand beside what was worked out.</summary>
/// <param name="Where">Address of the figure it belongs to.</param>
/// <param name="Value">As read.</param>
/// <param name="Quantity">What a meter showed; null where it is no quantity, such as a version of software.</param>
/// <param name="By">Who read it; empty where not said.</param>
/// <param name="Time">When; empty where not said.</param>
/// <param name="At">Where it was written.</param>
public sealed record Measurement(string Where, string Value, IQuantity? Quantity, string By, string Time, Mark At);
