using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>A current at a place of the supply, and between which conductors it flows.</summary>
/// <param name="Name">What draws it.</param>
/// <param name="Current">True root mean square.</param>
/// <param name="Load">The load; null for what is allowed for, and for other people's.</param>
/// <param name="Wiring">Where it lies.</param>
internal sealed record WiredDraw(string Name, Figure<ElectricCurrent> Current, PowerLoad? Load, MainsWiring Wiring);
