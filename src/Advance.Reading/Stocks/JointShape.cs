using Advance.Domain.Stocks;
using Advance.Reading.Shapes;

namespace Advance.Reading.Stocks;

/// <summary>What lets one box stand on, or hang from, another.</summary>
internal static class JointShape
{
    private static readonly Shape<JointUse> Use = Written.OneOf(
        "joint-use", "what a joint is good for", ("standing", JointUse.Standing), ("hanging", JointUse.Hanging), ("both", JointUse.Both));

    public static readonly RecordShape<Joint> It = new("joint", "What lets one box stand on, or hang from, another.", keys =>
    {
        var below = keys.Needed("below", Written.Name, "Face of the lower box.");
        var above = keys.Needed("above", Written.Name, "Face of the upper box.");
        var pieces = keys.Defaulted("pieces", Written.Between("joint-pieces", 1, 100), 1, "How many of it one pair of faces takes.", "1");
        var pins = keys.Defaulted("pins", Written.Count, 0, "Pins or locks in all.", "0");
        var use = keys.Needed("use", Use, "Standing, hanging or both.");
        return row => new Joint(below(row), above(row), pieces(row), pins(row), use(row));
    });
}
