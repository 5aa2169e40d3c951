using Advance.Domain.Gigs;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>The sound system.</summary>
internal static class SoundShape
{
    public static readonly RecordShape<Sound> It = new("sound", "The sound system.", keys =>
    {
        var consoles = keys.Any("consoles", Written.Things(DeviceShape.OfSound), "Desks.");
        var stageBoxes = keys.Any("stage-boxes", Written.Things(DeviceShape.OfSound), "Boxes that carry lines to a desk.");
        var processors = keys.Any("processors", Written.Things(DeviceShape.Processor), "What drives the loudspeakers.");
        var amplifiers = keys.Any("amplifiers", Written.Things(DeviceShape.OfSound), "What drives passive boxes.");
        var stacks = keys.Any("stacks", Written.Things(StackShape.It), "Loudspeakers from the floor up.");
        var hangs = keys.Any("hangs", Written.Things(StackShape.OfHang), "Loudspeakers flown under a frame.");
        var alwaysLive = keys.Any("always-live", Written.Table(InputShape.It), "Lines that are up for every act.");
        return row => new Sound(consoles(row), stageBoxes(row), processors(row), stacks(row), alwaysLive(row)) { Amplifiers = amplifiers(row), Hangs = hangs(row) };
    });
}
