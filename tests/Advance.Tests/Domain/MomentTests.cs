using Advance.Domain.Facts;

namespace Advance.Tests.Domain;

public sealed class MomentTests
{
    [Fact]
    public void Half_past_midnight_of_the_same_night_comes_after_the_music_is_off()
    {
        var empty = Moment.At(0, 30, nextDay: true);
        Assert.True(Moment.At(22, 30).CompareTo(empty) < 0);
        Assert.Equal("00:30 +1", empty.ToString());
        Assert.Equal("22:30", Moment.At(22, 30).ToString());
    }

    [Fact]
    public void A_set_that_runs_past_midnight_says_so() => Assert.Equal("00:15 +1", Moment.At(23, 30).Plus(45).ToString());
}
