using System.Globalization;
using System.Text.RegularExpressions;
using Advance.Reading.Phrases;

namespace Advance.Tests.Reading.Phrases;

public sealed class WholeNumbersTest
{
    [Theory]
    [InlineData(1, 2)]
    [InlineData(2, 4)]
    [InlineData(1, 32)]
    [InlineData(7, 7)]
    [InlineData(0, 100)]
    [InlineData(19, 1105)]
    public void A_pattern_takes_the_numbers_within_its_limits_and_no_others(int least, int most)
    {
        var pattern = new Regex($"^(?:{WholeNumbers.Between(least, most)})$");

        Assert.All(Enumerable.Range(0, most + 200), number =>
        {
            var text = number.ToString(CultureInfo.InvariantCulture);
            Assert.Equal(number >= least && number <= most, pattern.IsMatch(text));
            Assert.Equal(number >= least && number <= most, pattern.IsMatch($"00{text}"));
        });
    }
}
