using Advance.Handbook;

namespace Advance.Tests.Handbook;

/// <summary>The shares of the shop's policy: common practice, no source.</summary>
public sealed class SparesTests
{
    [Theory]
    [InlineData(1, 10, 0, 0)]
    [InlineData(1, 10, 3, 1)]
    [InlineData(1, 10, 10, 1)]
    [InlineData(1, 10, 11, 2)]
    [InlineData(2, 10, 5, 2)]
    [InlineData(0, 15, 20, 3)]
    [InlineData(0, 0, 20, 0)]
    public void Rounded_up_and_at_least_so_many_and_none_for_none(int atLeast, double percent, int inUse, int expected) =>
        Assert.Equal(expected, Spares.Of(atLeast, percent, inUse));

    [Fact]
    public void Less_than_nothing_is_a_mistake_of_the_caller() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Spares.Of(1, 10, -1));
}
