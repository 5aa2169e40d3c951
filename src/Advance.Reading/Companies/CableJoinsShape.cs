using Advance.Domain.Companies;
using Advance.Reading.Shapes;

namespace Advance.Reading.Companies;

/// <summary>The most joins in one run.</summary>
internal static class CableJoinsShape
{
    public static readonly RecordShape<CableJoins> It = new("cable-joins", "The most joins in one run, by what it is for.", keys =>
    {
        var usual = CableJoins.Default;
        var mic = keys.Number("mic", usual.Mic, "Microphones, DIs and returns.");
        var loudspeaker = keys.Number("loudspeaker", usual.Loudspeaker, "From amplifiers, and whatever has no key of its own.");
        var mains = keys.Number("mains", usual.Mains, "From an outlet to a unit and from unit to unit.");
        var feeder = keys.Number("feeder", usual.Feeder, "To a distribution.");
        var network = keys.Number("network", usual.Network, "Network, fibre and multis.");
        var lightingControl = keys.Number("lighting-control", usual.LightingControl, "Lighting control.");
        return row => new CableJoins
        {
            Mic = mic(row),
            Loudspeaker = loudspeaker(row),
            Mains = mains(row),
            Feeder = feeder(row),
            Network = network(row),
            LightingControl = lightingControl(row),
        };
    });
}
