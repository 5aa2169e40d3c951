using Advance.Handbook;
using UnitsNet;

namespace Advance.Tests.Handbook;

/// <summary>Hands by weight: common practice, no source.</summary>
public sealed class LiftingTests
{
    [Theory]
    [InlineData(0, 1)]
    [InlineData(25, 1)]
    [InlineData(25.1, 2)]
    [InlineData(45, 2)]
    [InlineData(45.1, 4)]
    [InlineData(80, 4)]
    [InlineData(80.1, null)]
    public void One_two_four_or_wheels(double kilograms, int? hands) => Assert.Equal(hands, Lifting.Hands(Mass.FromKilograms(kilograms)));

    [Fact]
    public void A_shop_may_be_stricter() =>
        Assert.Equal(2, Lifting.Hands(Mass.FromKilograms(22), Mass.FromKilograms(20), Mass.FromKilograms(40), Mass.FromKilograms(70)));

    [Fact]
    public void Less_than_nothing_is_a_mistake_of_the_caller() => Assert.Throws<ArgumentOutOfRangeException>(() => Lifting.Hands(Mass.FromKilograms(-1)));
}
