using Advance.Domain;
using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Planning;
using UnitsNet;

namespace Advance.Tests.Planning;

/// <summary>The margins are the shop's policy: common practice, no source.</summary>
public sealed class WeightTests
{
    [Theory]
    [InlineData(Known.Weighed, 20)]
    [InlineData(Known.Maker, 21)]
    [InlineData(Known.Estimated, 22)]
    [InlineData(Known.Stated, 22)]
    public void A_weight_has_the_margin_of_how_it_is_known(Known how, double kilograms) =>
        Assert.Equal(kilograms, Weight(TwoOf(how), Policies.Default)!.Value, 9);

    [Fact]
    public void The_company_sets_the_margins() =>
        Assert.Equal(30, Weight(TwoOf(Known.Estimated), Policies.Default with { WeightMargin = new(0, 0, 50) })!.Value, 9);

    [Fact]
    public void A_weight_that_nobody_knows_makes_no_total() => Assert.Null(Weight(Gigs.Kind("deck", 9), Policies.Default));

    private static Kind TwoOf(Known how) =>
        Gigs.Kind("deck", 9) with { Weight = Given.Of(Mass.FromKilograms(10), Gigs.Here, how: how) };

    private static double? Weight(Kind kind, Policies policies)
    {
        var gig = Gigs.Gig() with { Extras = [new Extra(kind.Id, Given.Of(2, Gigs.Here), null, "", Gigs.Here)] };
        Brief brief = Gigs.Brief(gig, kind);
        return Planner.Plan(brief with { Company = brief.Company with { Policies = policies } }).Load.Weight.Value?.Kilograms;
    }
}
