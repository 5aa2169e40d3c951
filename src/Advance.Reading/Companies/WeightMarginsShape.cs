using Advance.Domain.Companies;
using Advance.Reading.Shapes;
using UnitsNet;

namespace Advance.Reading.Companies;

/// <summary>What a company adds to weights.</summary>
internal static class WeightMarginsShape
{
    public static readonly RecordShape<WeightMargins> It = new("weight-margin", "What is added to a weight, by how it is known.", keys =>
    {
        var margins = Policies.Default.WeightMargin;
        var weighed = Margin(keys, "weighed", margins.Weighed, "On what was weighed.");
        var maker = Margin(keys, "maker", margins.Maker, "On a maker's figure.");
        var estimated = Margin(keys, "estimated", margins.Estimated, "On a guess, and on what nobody says how it is known.");
        return row => new WeightMargins(weighed(row).Percent, maker(row).Percent, estimated(row).Percent);
    });

    private static Func<Row, Ratio> Margin(Keys keys, string key, double percent, string words) =>
        keys.Defaulted(key, Written.Percentage, Ratio.FromPercent(percent), words, string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{percent} %"));
}
