using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using Advance.Planning;

namespace Advance.Tests.Planning;

/// <summary>Stacks of the sample gig: a sub, and on it two tops with their high-frequency ends together.</summary>
public sealed class StackTests
{
    private static readonly Lazy<Plan> Planned = new(() => Planner.Plan(SoundGigs.Sample));

    private static StackPlan Main => Planned.Value.Sound.Stacks.Single(stack => stack.Name == "Main SL");

    [Fact]
    public void Each_box_is_joined_to_the_one_below()
    {
        Assert.Null(Main.Boxes[0].Joint);
        Assert.Equal(
            ["1 x stack-foot, 2 pins, sub-top to box-foot", "2 x pair-link, 4 pins, box-top to box-top"],
            Main.Boxes.Skip(1).Select(box => $"{box.Joint!.Pieces} x {box.Joint.Kind.Id}, {box.Joint.Pins} pins, {box.Joint.Below} to {box.Joint.Above}"));
    }

    [Fact]
    public void The_tops_are_a_pair_and_the_sub_is_alone() =>
        Assert.Equal([null, 3, 2], Main.Boxes.Select(box => box.PairedWith));

    [Fact]
    public void The_sub_is_known_by_what_its_link_hands_on() =>
        Assert.Equal([true, false, false], Main.Boxes.Select(box => box.IsSub));

    // 0.60 + 0.55 + 0.55 m, on the floor beside a deck of 0.6 m.
    [Fact]
    public void It_stands_on_the_floor_and_is_as_high_as_its_boxes()
    {
        Assert.Equal((Footing.Floor, 0), (Main.On, Main.Base.Value!.Value.Meters));
        Assert.Equal(1.7, Main.Height.Value!.Value.Meters, 9);
        Assert.Equal(1.7, Main.Top.Value!.Value.Meters, 9);
        Assert.Equal([0, 0.6, 1.15], Main.Boxes.Select(box => Math.Round(box.Base.Value!.Value.Meters, 9, MidpointRounding.AwayFromZero)));
    }

    // 25 kg for one, 45 for two, 80 for four: common practice, no source.
    [Fact]
    public void Its_heaviest_box_says_how_many_lift() =>
        Assert.Equal(("sub-18", 52, 4), (Main.Lift!.Item, Main.Lift.Weight.Value!.Value.Kilograms, Main.Lift.Hands!.Value));

    // 52 + 2 x 27 kg of boxes, mat 2.4, foot 2.1, two links of 0.45 and six pins of 0.09 kg; all weighed, so without margin.
    [Fact]
    public void It_weighs_what_all_of_it_weighs() => Assert.Equal(52 + 54 + 2.4 + 2.1 + 0.9 + 0.54, Main.Weight.Value!.Value.Kilograms, 9);

    [Fact]
    public void Its_figures_stand_under_their_addresses() => Assert.Equal(
        ["sound/Main SL/height", "sound/Main SL/top", "sound/Main SL/weight", "sound/Main SR/height", "sound/Main SR/top", "sound/Main SR/weight"],
        Planned.Value.Sound.Figures.Select(stated => stated.Address.Text).Order(StringComparer.Ordinal));

    [Theory]
    [InlineData("stack-foot")]
    [InlineData("pair-link")]
    public void Without_its_joint_in_the_stock_a_box_is_not_joined(string joint)
    {
        var brief = SoundGigs.Sample;
        var kinds = brief.Stock.Kinds.Where(kind => kind.Key != joint).ToDictionary(StringComparer.Ordinal);
        var findings = Planner.Plan(brief with { Stock = new Stock(kinds) }).Findings.Where(finding => finding.Rule is "stack/no-joint" or "stack/loose-boxes").ToList();
        Assert.Equal(["stack/loose-boxes", "stack/no-joint"], findings.Select(finding => finding.Rule));
        Assert.DoesNotContain(Planned.Value.Findings, finding => finding.Rule.StartsWith("stack/", StringComparison.Ordinal));
    }

    [Fact]
    public void On_the_deck_it_ends_higher()
    {
        var stack = SoundGigs.Plan("    Main: {place: SR 2 m US 1 m, from-floor-up: [plinth, sub], fed-by: DRIVE out 1}", more: "stage: {size: 8 x 5 m, height: 0.6 m}").Sound.Stacks.Single();
        Assert.Equal((Footing.Deck, 0.6), (stack.On, stack.Base.Value!.Value.Meters));
        Assert.Equal(0.6 + 0.15 + 0.6, stack.Top.Value!.Value.Meters, 9);
        Assert.Equal(["sub"], stack.Chains.Single().Boxes.Select(box => box.Piece.Item));
    }

    [Fact]
    public void A_box_that_nobody_measured_makes_the_height_unknown()
    {
        var stack = SoundGigs.Plan(SoundGigs.Both("sub, top-odd")).Sound.Stacks[0];
        Assert.Null(stack.Height.Value);
        Assert.Equal(Verdict.CannotBeJudged, stack.Height.AtMost(new Figure<UnitsNet.Length>(UnitsNet.Length.FromMeters(9), Advance.Domain.Facts.Doubts.None, Reason.Derived.It)));
    }

    // Seen from above with the audience at the foot, what stands on the left and looks to the middle is turned anticlockwise.
    [Theory]
    [InlineData("SR 3 m", "at DS 3 m", -45)]
    [InlineData("SL 3 m", "at DS 3 m", 45)]
    [InlineData("SL 3 m", "at SL 3 m DS 9 m", 0)]
    [InlineData("SR 3 m", "toe-in 5 deg", -5)]
    [InlineData("SL 3 m", "toe-in 5 deg", 5)]
    public void It_faces_what_it_is_aimed_at(string place, string aim, double turn)
    {
        var stack = SoundGigs.Plan($"    Main: {{place: {place}, aim: {aim}, from-floor-up: [top], fed-by: DRIVE out 1}}").Sound.Stacks.Single();
        Assert.Equal(turn, stack.Turn, 9);
    }

    [Fact]
    public void A_strap_is_pulled_for_each_stack()
    {
        var plan = SoundGigs.Plan(SoundGigs.Both("3 x sub", "strap: 2 x strap"));
        Assert.Equal(4, plan.Pieces.Count(piece => piece.Item == "strap" && piece.IsPulled));
    }
}
