using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Planning;

namespace Advance.Tests.Planning;

/// <summary>What is set up at once, and who gets 48 V.</summary>
public sealed class PatchTotalsTests
{
    private static readonly Doubt Open = new("acts / Second / inputs / 2 / mic-or-di", Gigs.Here, "act");

    [Fact]
    public void Every_act_and_what_is_up_all_day_count_together()
    {
        var gig = Gigs.Gig(
            Gigs.Act("First", Gigs.Line(1, "mic", "tall boom"), Gigs.Line(2, "di")),
            Gigs.Act("Second", Gigs.Line(1, "mic", "tall boom", from: new Owner(OwnerKind.Act)), Gigs.Line(2, "own mic")));
        var plan = Planner.Plan(Brief(gig with { Sound = gig.Sound with { AlwaysLive = [Gigs.Line(9, "mic")] } }));
        Assert.Equal(
            ["di 1", "lines 5", "mic 3", "own mic 1", "tall-boom 2"],
            plan.Figures.Where(stated => stated.Address.Text.StartsWith("patch/totals/", StringComparison.Ordinal)).Select(stated => $"{stated.Address.Text[13..]} {stated.Value}"));
    }

    [Fact]
    public void A_stereo_mix_is_one_mix_and_two_returns()
    {
        var act = Gigs.Act("Band") with { Mixes = [Mix(1, 1), Mix(5, 6)] };
        var plan = Planner.Plan(Brief(Gigs.Gig(act)));
        Assert.Equal((2, 3), (Value(plan, "mixes"), Value(plan, "returns")));
    }

    [Fact]
    public void A_line_whose_microphone_is_open_may_be_one_more_of_any_kind()
    {
        var open = Gigs.Line(2) with { Device = Given.Unknown<CountedItem>(Gigs.Here, Open), Stand = "tall boom" };
        var plan = Planner.Plan(Brief(Gigs.Gig(Gigs.Act("Second", Gigs.Line(1, "mic"), open))));
        Assert.Equal([Open], Total(plan, "mic").RestsOn);
        Assert.Equal(1, Value(plan, "tall-boom"));
        Assert.Empty(Total(plan, "lines").RestsOn);
    }

    [Theory]
    [InlineData("mic", false)]
    [InlineData("di", true)]
    [InlineData("undescribed", null)]
    [InlineData("own mic", null)]
    [InlineData("laptop", false)]
    [InlineData(null, false)]
    public void Phantom_is_on_where_it_is_needed_and_unknown_where_nobody_knows(string? device, bool? expected) =>
        Assert.Equal(expected, Planner.Plan(Brief(Gigs.Gig(Gigs.Act("Solo", Gigs.Line(1, device))))).Patch.Lines[0].Phantom.Value);

    [Fact]
    public void A_doubt_about_whose_it_is_is_a_doubt_about_its_phantom()
    {
        var row = Gigs.Line(1, "di") with { From = Given.Of(new Owner(OwnerKind.Act), Gigs.Here, Open) };
        var phantom = Planner.Plan(Brief(Gigs.Gig(Gigs.Act("Solo", row)))).Patch.Lines[0].Phantom;
        Assert.True(phantom.Value);
        Assert.Equal([Open], phantom.RestsOn);
    }

    private static MixRow Mix(int first, int last) => new(new NumberRange(first, last), "Keys", null, null, null, null, "", Gigs.Here);

    private static Stated Total(Plan plan, string what) => plan.Figures.Single(stated => stated.Address.Text == $"patch/totals/{what}");

    private static object? Value(Plan plan, string what) => Total(plan, what).Value;

    private static Brief Brief(Gig gig) => Gigs.Brief(
        gig.WithBox("box"),
        Gigs.Box("box", 16),
        Gigs.Kind("mic", 9) with { Role = Role.Microphone, Phantom = Phantom.Harmless },
        Gigs.Kind("di", 9) with { Role = Role.DirectBox, Phantom = Phantom.Needed },
        Gigs.Kind("undescribed", 9) with { Role = Role.Microphone },
        Gigs.Kind("laptop", 9),
        Gigs.Kind("tall-boom", 9) with { Role = Role.Stand });
}
