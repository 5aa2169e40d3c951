using Advance.Domain.Companies;
using Advance.Reading.Shapes;

namespace Advance.Reading.Companies;

/// <summary>Leads that are pulled more than are laid.</summary>
internal static class LeadSparesShape
{
    public static readonly RecordShape<LeadSpares> It = new("lead-spares", "Leads that are pulled more than are laid.", keys =>
    {
        var usual = LeadSpares.Default;
        var mic = keys.Share("mic", usual.Mic, "Of each length of microphone lead.");
        var mains = keys.Share("mains", usual.Mains, "Of each length of mains and link lead, feeders aside.");
        var lightingControl = keys.Share("lighting-control", usual.LightingControl, "Of each length of lighting-control lead.");
        var adapters = keys.Share("adapters", usual.Adapters, "Of each kind of adapter that is used.");
        return row => new LeadSpares
        {
            Mic = mic(row),
            Mains = mains(row),
            LightingControl = lightingControl(row),
            Adapters = adapters(row),
        };
    });
}
