using UnitsNet;

namespace Advance.Domain.Facts;

/// <summary>What is put aside before the things themselves are chosen: <c>lighting 18 kW</c>, <c>sound 900 kg</c>. Exactly one amount is there.</summary>
/// <param name="For">The department or part of the gig.</param>
/// <param name="Draw">Electrical power in use.</param>
/// <param name="Current">Current in use, per phase.</param>
/// <param name="Weight">Weight to carry or to hang.</param>
public sealed record Allowance(string For, Power? Draw = null, ElectricCurrent? Current = null, Mass? Weight = null);
