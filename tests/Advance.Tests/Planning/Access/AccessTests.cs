using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Domain.Stocks;
using Advance.Domain.Venues;
using Advance.Planning;
using UnitsNet;

namespace Advance.Tests.Planning;

public sealed class AccessTests
{
    private static readonly AccessStep Porch = Step(1.5, 2.05, 1.5) with { Turn = Given.Of(Angle.FromDegrees(90), Gigs.Here) };

    // 2.05 x 0.98 m with 0.05 m all round is 2.15 x 1.08 m; between two ways of 1.5 m the longest is 2·√2·1.5 − 2·1.08 = 2.083 m.
    [Fact]
    public void A_full_deck_cart_does_not_turn_in_a_porch_where_its_decks_do_on_edge()
    {
        var cart = Sized("cart", 184, 2.05, 0.98, 1.25);
        var passage = Assert.Single(Through(Porch, cart));
        Assert.Equal((Verdict.Fails, Hindrance.Corner), (passage.Verdict, passage.Hindrance));
        Assert.Equal(2.0826, passage.Longest!.Value!.Value.Meters, 4);
        Assert.Equal(Verdict.Holds, Assert.Single(Through(Porch, Sized("deck", 16, 2, 1, 0.09))).Verdict);
    }

    [Fact]
    public void Without_the_clearance_the_cart_would_turn()
    {
        var passage = Assert.Single(Through(Porch, Sized("cart", 184, 2.05, 0.98, 1.25), Policies.Default with { CornerClearance = Length.Zero }));
        Assert.Equal(Verdict.Holds, passage.Verdict);
    }

    [Theory]
    [InlineData(60, Verdict.Holds)]
    [InlineData(120, Verdict.Fails)]
    public void What_four_can_lift_is_laid_on_its_side_and_what_is_heavier_is_not(double kilograms, Verdict verdict) =>
        Assert.Equal(verdict, Assert.Single(Through(Step(0.8, 2, null), Sized("case", kilograms, 1.2, 1.0, 0.7))).Verdict);

    [Theory]
    [InlineData(0.8, 2.0, Verdict.Holds)]
    [InlineData(0.8, 1.9, Verdict.Fails)]
    [InlineData(0.7, 2.0, Verdict.Fails)]
    public void A_door_is_as_wide_and_as_high_as_what_just_fits(double wide, double high, Verdict verdict) =>
        Assert.Equal(verdict, Assert.Single(Through(Step(wide, high, null), Sized("case", 200, 1.2, 0.8, 2.0))).Verdict);

    [Fact]
    public void What_one_person_carries_and_has_no_size_is_no_question()
    {
        Assert.Empty(Through(Porch, Weighing("bag", 8)));
        Assert.Equal(Hindrance.Size, Assert.Single(Through(Porch, Weighing("lump", 60))).Hindrance);
        Assert.Equal(Hindrance.Size, Assert.Single(Through(Porch, Gigs.Kind("nobody knows", 9))).Hindrance);
    }

    [Fact]
    public void A_place_that_says_nothing_hinders_nothing() => Assert.Empty(Through(Step(null, null, 30), Sized("cart", 184, 2.05, 0.98, 1.25)));

    [Fact]
    public void A_doubt_about_the_door_is_a_doubt_about_what_comes_through()
    {
        var doubt = new Doubt("wide", Gigs.Here, "venue");
        var door = Step(1.5, 2, null) with { Wide = Given.Of(Length.FromMeters(1.5), Gigs.Here, doubt) };
        Assert.Equal([doubt], Assert.Single(Through(door, Sized("case", 20, 1, 1, 1))).RestsOn);
    }

    private static AccessStep Step(double? wide, double? high, double? far) => new("door", Metres(wide), Metres(high), Metres(far), null, 0, "", Gigs.Here);

    private static Given<Length>? Metres(double? metres) => metres is { } known ? Given.Of(Length.FromMeters(known), Gigs.Here) : null;

    private static Kind Weighing(string id, double kilograms) =>
        Gigs.Kind(id, 9) with { Weight = Given.Of(Mass.FromKilograms(kilograms), Gigs.Here, how: Known.Weighed) };

    private static Kind Sized(string id, double kilograms, double width, double depth, double height) => Weighing(id, kilograms) with
    {
        Size = Given.Of(new Size(Length.FromMeters(width), Length.FromMeters(depth), Length.FromMeters(height)), Gigs.Here),
    };

    private static IReadOnlyList<Passage> Through(AccessStep step, Kind kind, Policies? policies = null)
    {
        var brief = Gigs.Brief(Gigs.Gig() with { Extras = [new Extra(kind.Id, Given.Of(1, Gigs.Here), null, "", Gigs.Here)] }, kind);
        var venue = Venue.Unknown with { Access = Given.Of<IReadOnlyList<AccessStep>>([step], Gigs.Here) };
        return Planner.Plan(brief with { Venue = venue, Company = brief.Company with { Policies = policies ?? Policies.Default } }).Load.Passages;
    }
}
