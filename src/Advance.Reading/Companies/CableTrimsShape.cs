using Advance.Domain.Companies;
using Advance.Reading.Shapes;

namespace Advance.Reading.Companies;

/// <summary>What is left at the ends of a lead.</summary>
internal static class CableTrimsShape
{
    public static readonly RecordShape<CableTrims> It = new("cable-trims", "What is left at the ends of a lead, to reach and to tidy up.", keys =>
    {
        var usual = CableTrims.Default;
        var micStand = keys.Metres("mic-stand", usual.MicStand, "At a microphone or DI.");
        var micBox = keys.Metres("mic-box", usual.MicBox, "At the stage box that a microphone goes to.");
        var lead = keys.Metres("lead", usual.Lead, "At each end of a loudspeaker, link, mains or control lead.");
        var feederSource = keys.Metres("feeder-source", usual.FeederSource, "Where a feeder is tied in.");
        var feederBox = keys.Metres("feeder-box", usual.FeederBox, "At the distribution that a feeder feeds.");
        var hall = keys.Metres("hall", usual.Hall, "At each end of a multi or a network lead that goes out into the hall.");
        return row => new CableTrims
        {
            MicStand = micStand(row),
            MicBox = micBox(row),
            Lead = lead(row),
            FeederSource = feederSource(row),
            FeederBox = feederBox(row),
            Hall = hall(row),
        };
    });
}
