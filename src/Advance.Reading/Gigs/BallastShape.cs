using Advance.Domain.Gigs;
using Advance.Reading.Shapes;
using Advance.Reading.Stocks;

namespace Advance.Reading.Gigs;

/// <summary>Weight that keeps something from tipping or sliding.</summary>
internal static class BallastShape
{
    public static readonly RecordShape<BallastRow> It = new("ballast", "Weight that keeps something from tipping or sliding.", keys =>
    {
        var item = keys.Needed("item", Written.Name, "Its kind in the stock, or words.");
        var count = keys.Defaulted("count", Written.Between("ballast-count", 1, 1000), 1, "How many of it.", "1");
        var weight = keys.Open("weight", Written.WeighedWeight, "Of each, of water full; weighed, maker or estimated after it says how it is known. Without it as its kind.");
        var isFixed = keys.Defaulted("held", Written.OneOf("ballast-held", "how ballast is held", ("fixed", true), ("loose", false)), false, "Fixed to what it holds, or loose; what lies loose counts for nothing.", "loose");
        var across = keys.Open("across", Written.Offset, "Of its middle from that of what it holds, towards stage left as that faces the audience; without it in the middle.");
        var back = keys.Open("back", Written.Offset, "The same towards the rear; without it in the middle.");
        var height = keys.Open("height", Written.Length, "Of its middle above the ground; without it on the ground.");
        return row => new BallastRow(item(row), count(row), KindShape.Weight(weight(row)), isFixed(row), across(row), back(row), height(row), row.At);
    });
}
