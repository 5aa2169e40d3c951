using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Planning;
using CsCheck;

namespace Advance.Tests.Planning;

public sealed class StockTests
{
    private static readonly Gen<Brief> Briefs = Gen.Select(
        Gen.Int[0, 6].Array[4], Gen.Int[0, 6].Array[4], Gen.Enum<OwnerKind>().Array[4], (wanted, owned, from) =>
        {
            var gig = Gigs.Gig() with { Extras = [.. wanted.Select((count, kind) => Extra(Id(kind), count, from[kind])).Where(extra => extra.Count.Value > 0)] };
            return Gigs.Brief(gig, [.. owned.Select((count, kind) => Gigs.Kind(Id(kind), count) with { Role = Role.Microphone, Substitutes = [Id((kind + 1) % 4)] })]);
        });

    [Fact]
    public void Every_piece_is_on_the_pull_list_or_is_somebody_elses() => Briefs.Sample(brief =>
    {
        var plan = Planner.Plan(brief);
        var listed = plan.Stock.Lines.SelectMany(line => line.Pieces).Concat(plan.Stock.FromOthers).Select(piece => piece.Address);
        Assert.Equal(plan.Pieces.Select(piece => piece.Address).Order(), listed.Order());
    });

    [Fact]
    public void What_is_taken_off_the_shelf_is_what_is_wanted_whoever_stands_in() => Briefs.Sample(brief =>
    {
        var lines = Planner.Plan(brief).Stock.Lines;
        Assert.Equal(lines.Sum(line => line.Need.Value + line.Spare.Value), lines.Sum(line => line.Total.Value));
    });

    [Fact]
    public void Nothing_that_stands_in_is_missing_itself() => Briefs.Sample(brief =>
        Assert.All(Planner.Plan(brief).Stock.Lines.Where(line => line.StandingIn > 0), line => Assert.Equal(0, line.Short.Value)));

    [Fact]
    public void Companions_come_along_and_a_circle_of_them_ends()
    {
        var lead = Gigs.Kind("lead", 9) with { With = [new CountedItem(2, "tie")] };
        var tie = Gigs.Kind("tie", 99) with { With = [new CountedItem(1, "tie")] };
        var plan = Planner.Plan(Gigs.Brief(Gigs.Gig() with { Extras = [Extra("lead", 1, OwnerKind.Shop)] }, lead, tie));
        Assert.Contains(plan.Stock.Lines, line => line.Item == "tie" && line.Need.Value >= 2);
    }

    [Fact]
    public void A_doubt_about_who_brings_a_thing_is_a_doubt_about_how_many_are_pulled()
    {
        var doubt = new Doubt("from", Gigs.Here, "act");
        var row = Gigs.Line(1, "di") with { From = Given.Of(new Owner(OwnerKind.Act), Gigs.Here, doubt) };
        var plan = Planner.Plan(Gigs.Brief(Gigs.Gig(Gigs.Act("Solo", row, Gigs.Line(2, "di"))), Gigs.Kind("di", 4)));
        var line = Assert.Single(plan.Stock.Lines, line => line.Item == "di");
        Assert.Equal(1, line.Need.Value);
        Assert.Equal([doubt], line.Need.RestsOn);
        Assert.Equal([doubt], line.Total.RestsOn);
    }

    [Fact]
    public void What_is_hired_is_not_short_on_any_sheet()
    {
        var extras = new[] { Extra("radio", 3, OwnerKind.Shop), Extra("radio", 1, OwnerKind.Hire) };
        var plan = Planner.Plan(Gigs.Brief(Gigs.Gig() with { Extras = extras }, Gigs.Kind("radio", 2)));
        var line = Assert.Single(plan.Stock.Lines);
        Assert.Equal((3, 1, 0), (line.Total.Value, line.Hired.Value, line.Short.Value));
        Assert.Empty(plan.Findings);
    }

    [Fact]
    public void A_hired_piece_that_is_in_use_covers_no_other()
    {
        var gig = Gigs.Gig().WithBox("box").WithBox("box");
        var (first, second) = (gig.Sound.StageBoxes[0], gig.Sound.StageBoxes[1]);
        var hired = first with { From = Given.Of(new Owner(OwnerKind.Hire, "Vale"), Gigs.Here) };
        var plan = Planner.Plan(Gigs.Brief(gig with { Sound = gig.Sound with { StageBoxes = [hired, second] } }, Gigs.Box("box", 4) with { Owned = Given.Of(0, Gigs.Here) }));
        Assert.Equal(1, Assert.Single(plan.Stock.Lines).Short.Value);
        Assert.Contains(plan.Findings, finding => finding.Rule == "stock/too-few");
    }

    [Fact]
    public void What_comes_along_with_a_hired_piece_covers_nothing_of_ours()
    {
        var radio = Gigs.Kind("radio", 1) with { With = [new CountedItem(1, "lead")] };
        var extras = new[] { Extra("radio", 1, OwnerKind.Shop), Extra("radio", 1, OwnerKind.Hire) };
        var plan = Planner.Plan(Gigs.Brief(Gigs.Gig() with { Extras = extras }, radio, Gigs.Kind("lead", 0)));
        Assert.Equal(1, Assert.Single(plan.Stock.Lines, line => line.Item == "lead").Short.Value);
    }

    private static string Id(int kind) => $"kind-{(char)('a' + kind)}";

    private static Extra Extra(string item, int count, OwnerKind from) =>
        new(item, Given.Of(count, Gigs.Here), Given.Of(new Owner(from), Gigs.Here), "", Gigs.Here);
}
