using Advance.Domain.Venues;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;

namespace Advance.Reading.Venues;

/// <summary>What things stand on that do not stand on a stage.</summary>
internal static class GroundShape
{
    public static readonly RecordShape<SiteGround> It = new("ground", "What things stand on that do not stand on a stage.", keys =>
    {
        var surface = keys.Defaulted("surface", Written.Text, "", "What it is.", "not said");
        var friction = keys.Asked("friction", Written.Factor, "Between a foot and it, wet.");
        var slope = keys.Asked("slope", Written.Angle, "How much it falls; 0 deg where it is level.");
        var falls = keys.Open("falls-to", Written.As(Edges.Of), "The side of the stage that it falls towards; without it towards any.");
        var bearing = keys.Asked("bearing", Written.As(Quantities.AreaLoad), "What it bears.");
        var soft = keys.Defaulted("soft", Written.YesNo, false, "Whether it is soft, or gets so in rain.", "no");
        return row => new SiteGround(surface(row), friction(row), slope(row), falls(row), bearing(row), soft(row), row.At);
    });
}
