using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What a leg gets if the neutral opens.</summary>
/// <param name="Leg"><c>L1</c>.</param>
/// <param name="Voltage">Over the loads between it and what was the neutral.</param>
/// <param name="AtRisk">Those loads, where that is more than a tenth too much; none where it is not.</param>
public sealed record LostLeg(string Leg, Figure<ElectricPotential> Voltage, IReadOnlyList<PowerLoad> AtRisk);
