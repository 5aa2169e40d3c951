using Advance.Domain.Gigs;
using Advance.Domain.Wording;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>What is set on a box itself, as far as it is not what every box comes with.</summary>
/// <param name="speech">The units.</param>
internal sealed class SettingWords(Speech speech)
{
    /// <summary>Few words; empty where nothing is set.</summary>
    public string Of(DrivenBox box) => string.Join(", ", Parts(box));

    private IEnumerable<string> Parts(DrivenBox box)
    {
        var set = box.Set;
        if (set.HighPass is { } high)
        {
            yield return $"high-pass {Value(high.Value)}";
        }

        if (set.LowPass is { } low)
        {
            yield return $"low-pass {Value(low.Value)}";
        }

        if (set.Polarity.Value == Polarity.Reversed)
        {
            yield return "polarity reversed";
        }

        if (set.Delay.Value is not { Seconds: 0 })
        {
            yield return $"delay {Value(set.Delay.Value)} from {set.DelayFrom}, start value";
        }

        if (set.Aim is { Value: not { Degrees: 0 } } aim)
        {
            yield return $"electronic aim {Value(aim.Value)}";
        }
    }

    private string Value<T>(T? value)
        where T : struct => value is { } known ? speech.Say(known) : "unknown";
}
