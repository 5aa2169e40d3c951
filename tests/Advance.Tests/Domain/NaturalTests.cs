using Advance.Domain.Figures;
using Advance.Domain.Naming;
using CsCheck;

namespace Advance.Tests.Domain;

public sealed class NaturalTests
{
    private static readonly Gen<string> Names = Gen.String["ab01 /"].Where(name => name.Length < 12);

    [Theory]
    [InlineData("ch 2", "ch 10")]
    [InlineData("SB1 in 9", "SB1 in 10")]
    [InlineData("a", "a1")]
    [InlineData("a01", "a1")]
    [InlineData("9999999999999999999998", "9999999999999999999999")]
    public void Numbers_in_names_are_numbers(string first, string second)
    {
        Assert.True(Natural.Compare(first, second) < 0);
        Assert.True(Natural.Compare(second, first) > 0);
    }

    [Fact]
    public void It_is_an_order() => Gen.Select(Names, Names, Names).Sample((a, b, c) =>
    {
        Assert.Equal(Math.Sign(Natural.Compare(a, b)), -Math.Sign(Natural.Compare(b, a)));
        Assert.Equal(a == b, Natural.Compare(a, b) == 0);
        if (Natural.Compare(a, b) <= 0 && Natural.Compare(b, c) <= 0)
        {
            Assert.True(Natural.Compare(a, c) <= 0);
        }
    });

    [Fact]
    public void A_slash_in_a_name_makes_no_part_of_an_address()
    {
        var address = Address.Of("patch") / "Keys L/R";
        Assert.Equal("patch/Keys L~1R", address.Text);
        Assert.NotEqual(address, Address.Of("patch") / "Keys L" / "R");
    }
}
