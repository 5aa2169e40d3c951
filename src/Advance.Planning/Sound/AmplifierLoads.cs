using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Adds up what hangs on each channel of an amplifier.</summary>
internal static class AmplifierLoads
{
    /// <summary>Every channel that something hangs on.</summary>
    public static IEnumerable<AmplifierLoad> Of(IReadOnlyList<SoundDevice> devices, Wiring wiring)
    {
        foreach (var device in devices.Where(device => device.Role == SoundRole.Amplifier))
        {
            foreach (var port in wiring.UsedOutputs(device.Name))
            {
                var boxes = wiring.Reached(port).Select(found => found.Box).ToList();
                if (boxes.Count > 0)
                {
                    var address = Address.Of("sound") / device.Name / "out" / (port.Number ?? 1);
                    yield return new AmplifierLoad(address, port, boxes, Parallel(boxes), Least(device), wiring.OutOf(port).First().At);
                }
            }
        }
    }

    private static Figure<ElectricResistance> Parallel(IReadOnlyList<StackedBox> boxes) =>
        Sum.Of("impedance of boxes in parallel", "Z = 1 / Σ (1 / Zᵢ)", CircuitTheory.Ohm)
            .PutAll("Zᵢ", boxes.Select(ImpedanceOf))
            .Gives(Impedances.Parallel);

    // A box of no impedance would be a short circuit: whoever writes that does not know it.
    private static Figure<ElectricResistance> ImpedanceOf(StackedBox box) =>
        box.Piece.Kind?.Loudspeaker?.Impedance is { } given && (!given.IsKnown || given.Value.Ohms > 0) ? Figure.From(given) : Unknown;

    private static Figure<ElectricResistance> Least(SoundDevice device) =>
        device.Kind?.Loudspeaker?.LeastImpedance is { } given ? Figure.From(given) : Unknown;

    private static Figure<ElectricResistance> Unknown => new(null, Doubts.None, Reason.Derived.It);
}
