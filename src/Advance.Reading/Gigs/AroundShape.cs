using Advance.Domain.Gigs;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>What stands around the stages.</summary>
internal static class AroundShape
{
    public static readonly RecordShape<IReadOnlyList<Thing>> It = new("around", "What stands around the stages.", keys =>
        keys.Any("things", Written.TableOfThings(ThingShape.It, "name"), "What stands there."));
}
