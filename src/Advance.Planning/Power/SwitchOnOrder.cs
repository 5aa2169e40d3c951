namespace Advance.Planning;

/// <summary>
/// In which order devices are closed. Common practice, no source: what makes the signal first and what is heard last, so that nothing
/// thumps; one device after the other, so that not everything starts at once.
/// </summary>
internal static class SwitchOnOrder
{
    /// <summary>A step for each device behind which something is used.</summary>
    public static IReadOnlyList<SwitchOnStep> Of(IReadOnlyList<Circuit> circuits) =>
    [
        .. circuits
            .GroupBy(circuit => DeviceOf(circuit).Address)
            .Select(group => (Device: DeviceOf(group.First()), Circuits: group.ToList()))
            .OrderBy(one => one.Circuits.Max(Rank))
            .ThenBy(one => one.Circuits.Min(Rank))
            .ThenBy(one => one.Device.Address)
            .Select((one, index) => new SwitchOnStep(index + 1, one.Device, one.Circuits)),
    ];

    /// <summary>Whether it makes a noise by itself.</summary>
    public static bool IsHeard(PowerUse use) => use is PowerUse.Loudspeaker or PowerUse.Monitor;

    // An outlet without a device of its own comes on with the one before it; where nobody knows of any, it is switched at itself.
    private static SupplyPoint DeviceOf(Circuit circuit) => circuit.Outlet.Protection ?? circuit.Outlet;

    private static int Rank(Circuit circuit) => circuit.Chain.Loads.Max(load => load.Use switch
    {
        PowerUse.Sound => 0,
        PowerUse.Other => 1,
        PowerUse.Lighting => 2,
        PowerUse.Backline => 3,
        PowerUse.Monitor => 4,
        _ => 5,
    });
}
