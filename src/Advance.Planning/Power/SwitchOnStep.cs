using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>One device that is closed, when all before it are.</summary>
/// <param name="Number">From 1 on.</param>
/// <param name="Device">The outlet with the device, or the service, where nothing behind it can be switched by itself.</param>
/// <param name="Circuits">What comes on with it.</param>
public sealed record SwitchOnStep(int Number, SupplyPoint Device, IReadOnlyList<Circuit> Circuits)
{
    /// <summary>What all of it draws at the first moment, peak.</summary>
    public Figure<ElectricCurrent> Inrush => Device.Inrush;

    /// <summary>Whether a loudspeaker comes on together with what feeds it: it is switched off at itself before.</summary>
    public bool MixesLoudspeakers => Device.Loads.Any(load => SwitchOnOrder.IsHeard(load.Use)) && Device.Loads.Any(load => load.Use == PowerUse.Sound);
}
