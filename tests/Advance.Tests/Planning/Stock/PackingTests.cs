using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Domain.Stocks;
using Advance.Planning;
using CsCheck;
using UnitsNet;

namespace Advance.Tests.Planning;

public sealed class PackingTests
{
    // Six kinds of two departments in two kinds of case, and one that packs into nothing.
    private static readonly Gen<Brief> Briefs = Gen.Select(Gen.Int[0, 30].Array[7], Gen.Int[1, 12].Array[7], (wanted, packs) =>
    {
        var kinds = wanted.Select((_, index) => KindOf(index, packs[index])).ToList();
        var extras = wanted.Select((count, index) => (count, index)).Where(found => found.count > 0).Select(found => Extra(Id(found.index), found.count));
        return Gigs.Brief(Gigs.Gig() with { Extras = [.. extras] }, [.. kinds, CaseOf("crate"), CaseOf("bag")]);
    });

    [Fact]
    public void Everything_pulled_travels_in_a_case_or_loose() => Briefs.Sample(brief =>
    {
        var plan = Planner.Plan(brief);
        var travelling = plan.Stock.Units.SelectMany(unit => unit.Contents.Count > 0 ? unit.Contents.Select(packed => (packed.Item, packed.Count)) : [(unit.Item, unit.Count)])
            .GroupBy(found => found.Item, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.Sum(found => found.Count), StringComparer.Ordinal);
        var pulled = plan.Stock.Lines.Where(line => line.Kind!.Role != Role.Case && line.Total.Value > 0).ToDictionary(line => line.Item, line => line.Total.Value!.Value, StringComparer.Ordinal);
        Assert.Equal(pulled.OrderBy(line => line.Key, StringComparer.Ordinal), travelling.OrderBy(line => line.Key, StringComparer.Ordinal));
    });

    [Fact]
    public void No_case_is_fuller_than_full_and_none_holds_two_departments() => Briefs.Sample(brief =>
        Assert.All(Planner.Plan(brief).Stock.Units.Where(unit => unit.Contents.Count > 0), unit =>
        {
            Assert.True(unit.Contents.Sum(packed => (double)packed.Count / packed.Kind!.Packs!.Count) <= 1 + 1e-9);
            Assert.Single(unit.Contents.Select(packed => packed.Kind!.Department).Distinct(StringComparer.Ordinal));
            Assert.All(unit.Contents, packed => Assert.Equal(unit.Item, packed.Kind!.Packs!.Item));
        }));

    // First fit never leaves two cases of which both are at most half full.
    [Fact]
    public void Of_one_kind_and_department_at_most_one_case_is_half_empty() => Briefs.Sample(brief =>
    {
        var fill = Planner.Plan(brief).Stock.Units.Where(unit => unit.Contents.Count > 0)
            .GroupBy(unit => (unit.Item, unit.Contents[0].Kind!.Department), unit => unit.Contents.Sum(packed => (double)packed.Count / packed.Kind!.Packs!.Count));
        Assert.All(fill, group => Assert.True(group.Count(share => share <= 0.5) <= 1));
    });

    [Fact]
    public void A_case_is_a_line_of_the_pull_list_and_counted_against_what_is_owned() => Briefs.Sample(brief =>
    {
        var plan = Planner.Plan(brief);
        foreach (var id in new[] { "crate", "bag" })
        {
            var packed = plan.Stock.Units.Count(unit => unit.Item == id);
            Assert.Equal(packed, plan.Stock.Lines.Where(line => line.Item == id).Sum(line => line.Total.Value));
            Assert.Equal(packed > 2, plan.Findings.Any(finding => finding.Rule == "stock/too-few" && finding.Where.Text == $"stock/{id}"));
        }
    });

    [Fact]
    public void A_case_weighs_what_is_in_it_and_itself()
    {
        var lead = Weighing(Gigs.Kind("lead", 99), 0.5) with { Packs = new CountedItem(40, "crate") };
        var plan = Planner.Plan(Gigs.Brief(Gigs.Gig() with { Extras = [Extra("lead", 45)] }, lead, Weighing(CaseOf("crate"), 2.4)));
        Assert.Equal([22.4, 4.9], plan.Stock.Units.Select(unit => Math.Round(unit.Gross.Value!.Value.Kilograms, 9)));
        Assert.Equal(27.3, plan.Load.Gross.Value!.Value.Kilograms, 9);
        Assert.Equal(22.5, plan.Load.Weight.Value!.Value.Kilograms, 9);
    }

    [Fact]
    public void What_stands_in_a_rack_travels_in_it_and_the_rack_is_taken_once()
    {
        var rack = new Thing("stage rack", "rack", Given.Of<Place>(Place.Centre.It, Gigs.Here), null, null, null, "", new Mark("gig.yaml", 7, 1));
        var box = new Device("SB1", Given.Of("box", Gigs.Here), Given.Of<Place>(new Place.AtThing("stage rack"), Gigs.Here), null, null, null, new Mark("gig.yaml", 8, 1));
        var gig = Gigs.Gig() with { Around = [rack], Sound = Sound.None with { StageBoxes = [box] } };
        var kind = Gigs.Kind("box", 2) with { Role = Role.StageBox, Packs = new CountedItem(1, "rack") };
        var plan = Planner.Plan(Gigs.Brief(gig, kind, CaseOf("rack")));
        var unit = Assert.Single(plan.Stock.Units);
        Assert.Equal(("stage rack", "box"), (unit.Name, Assert.Single(unit.Contents).Item));
        Assert.Equal(1, Assert.Single(plan.Stock.Lines, line => line.Item == "rack").Total.Value);
    }

    [Fact]
    public void A_case_that_was_asked_for_is_filled_first_and_travels_empty_where_nothing_needs_it()
    {
        var lead = Gigs.Kind("lead", 99) with { Packs = new CountedItem(10, "crate") };
        var plan = Planner.Plan(Gigs.Brief(Gigs.Gig() with { Extras = [Extra("lead", 8), Extra("crate", 2)] }, lead, CaseOf("crate")));
        Assert.Equal([8, 0], plan.Stock.Units.Select(unit => unit.Contents.Sum(packed => packed.Count)));
        Assert.Equal(2, Assert.Single(plan.Stock.Lines, line => line.Item == "crate").Total.Value);
    }

    private static string Id(int index) => $"kind-{(char)('a' + index)}";

    private static Kind KindOf(int index, int packs) => Gigs.Kind(Id(index), 99) with
    {
        Department = index % 2 == 0 ? "sound" : "lights",
        Shelf = $"A{index}",
        Packs = index == 6 ? null : new CountedItem(packs, index < 3 ? "crate" : "bag"),
    };

    private static Kind CaseOf(string id) => Gigs.Kind(id, 2) with { Role = Role.Case, Department = "cases" };

    private static Kind Weighing(Kind kind, double kilograms) => kind with { Weight = Given.Of(Mass.FromKilograms(kilograms), Gigs.Here, how: Known.Weighed) };

    private static Extra Extra(string item, int count) => new(item, Given.Of(count, Gigs.Here), null, "", Gigs.Here);
}
