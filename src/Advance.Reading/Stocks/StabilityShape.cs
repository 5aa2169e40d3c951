using Advance.Domain.Stocks;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;

namespace Advance.Reading.Stocks;

/// <summary>How a kind stands and what the wind does to it.</summary>
internal static class StabilityShape
{
    private static readonly RecordShape<Foot> Foot = new("foot", "Where one foot is.", keys =>
    {
        var across = keys.Needed("across", Written.Offset, "From its middle towards stage left, as it faces the audience.");
        var back = keys.Needed("back", Written.Offset, "From its middle towards its rear.");
        return row => new Foot(across(row), back(row));
    });

    private static readonly Shape<FootKind> FootKinds = Written.OneOf(
        "foot-kind", "what a thing stands on", ("firm", FootKind.Firm), ("levelling", FootKind.Levelling), ("castors", FootKind.Castors));

    private static readonly Shape<WindShape> Shapes = Written.OneOf(
        "wind-shape", "what a thing is to the wind", ("box", WindShape.Box), ("sheet", WindShape.Sheet), ("wall", WindShape.Wall), ("lattice", WindShape.Lattice));

    public static readonly RecordShape<Stability> It = new("standing", "How it stands, and what the wind does to it.", keys =>
    {
        var feet = keys.Any("feet", Written.Table(Foot), "Where its feet are; without them at the corners of its size.");
        var foot = keys.Defaulted("foot", FootKinds, FootKind.Firm, "What it stands on.", "firm");
        var footArea = keys.Open("foot-area", Written.As(Quantities.Area), "What one foot covers; without it it stands on its whole underside.");
        var height = keys.Open("centre-height", Written.Length, "Of its centre of gravity above its underside; without it half its height.");
        var across = keys.Open("centre-across", Written.Offset, "Of its centre of gravity from its middle, towards stage left as it faces the audience.");
        var back = keys.Open("centre-back", Written.Offset, "Of its centre of gravity from its middle, towards its rear.");
        var front = keys.Open("front-area", Written.As(Quantities.Area), "What the wind sees from the front; of a box without it width times height.");
        var side = keys.Open("side-area", Written.As(Quantities.Area), "What the wind sees from the side; of a box without it depth times height.");
        var rear = keys.Open("rear-area", Written.As(Quantities.Area), "What the wind sees from behind; without it as from the front.");
        var shape = keys.Defaulted("shape", Shapes, WindShape.Box, "What it is to the wind; of a lattice its areas are those of its bars.", "box");
        var coefficient = keys.Open("force-coefficient", Written.Factor, "Where it is known; without it by its shape.");
        var source = keys.Defaulted("coefficient-from", Written.Text, "", "Where that coefficient stands.", "not said");
        var strength = keys.Open("joint-strength", Written.As(Quantities.Moment), "Of a joint, the moment that it carries.");
        return row => new Stability(feet(row), foot(row), shape(row))
        {
            FootArea = footArea(row),
            CentreHeight = height(row),
            CentreAcross = across(row),
            CentreBack = back(row),
            FrontArea = front(row),
            SideArea = side(row),
            RearArea = rear(row),
            ForceCoefficient = coefficient(row),
            ForceCoefficientFrom = source(row),
            JointStrength = strength(row),
        };
    });
}
