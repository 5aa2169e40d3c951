using Advance.Domain.Wording;
using Advance.Reading.Shapes;
using UnitsNet;

namespace Advance.Reading.Companies;

/// <summary>Keys of settings: a quantity each, where common practice stands if it is left out.</summary>
internal static class PolicyKeys
{
    /// <summary>A length in metres.</summary>
    public static Func<Row, Length> Metres(this Keys keys, string key, Length otherwise, string words) =>
        keys.Defaulted(key, Written.Length, otherwise, words, Speech.Metric.Say(otherwise));

    /// <summary>A share in per cent.</summary>
    public static Func<Row, double> Percent(this Keys keys, string key, double otherwise, string words)
    {
        var share = keys.Defaulted(key, Written.Percentage, Ratio.FromPercent(otherwise), words, $"{Numbers.Plain(otherwise, 1)} %");
        return row => share(row).Percent;
    }

    /// <summary>A count.</summary>
    public static Func<Row, int> Number(this Keys keys, string key, int otherwise, string words) =>
        keys.Defaulted(key, Written.Count, otherwise, words, Numbers.Plain(otherwise, 0));

    /// <summary>A share with a floor.</summary>
    public static Func<Row, Domain.Companies.Share> Share(this Keys keys, string key, Domain.Companies.Share otherwise, string words) =>
        keys.Defaulted(key, Written.Share, otherwise, words, $"{Numbers.Plain(otherwise.Percent, 1)} % at least {otherwise.AtLeast}");
}
