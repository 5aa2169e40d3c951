using System.Globalization;

namespace Advance.Reading.Phrases;

/// <summary>Regular expressions for whole numbers within limits, with or without noughts before them.</summary>
internal static class WholeNumbers
{
    /// <summary>All numbers from the least to the most, both of them too.</summary>
    public static string Between(int least, int most)
    {
        var (low, high) = (Digits(least), Digits(most));
        var byLength = Enumerable.Range(low.Length, high.Length - low.Length + 1).Select(length =>
            Among(length == low.Length ? low : $"1{new string('0', length - 1)}", length == high.Length ? high : new string('9', length)));
        return $"0{{0,{9 - high.Length}}}(?:{string.Join('|', byLength)})";
    }

    // Both have as many digits.
    private static string Among(string low, string high)
    {
        if (low == high)
        {
            return low;
        }

        if (low.All(digit => digit == '0') && high.All(digit => digit == '9'))
        {
            return $"[0-9]{{{low.Length}}}";
        }

        var (zeros, nines) = (new string('0', low.Length - 1), new string('9', low.Length - 1));
        var parts = Enumerable.Range(low[0], high[0] - low[0] + 1).Select(digit =>
            $"{(char)digit}{Among(digit == low[0] ? low[1..] : zeros, digit == high[0] ? high[1..] : nines)}");
        return $"(?:{string.Join('|', parts)})";
    }

    private static string Digits(int number) => number.ToString(CultureInfo.InvariantCulture);
}
