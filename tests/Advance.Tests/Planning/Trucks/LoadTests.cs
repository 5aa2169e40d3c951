using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Planning;
using CsCheck;
using UnitsNet;

namespace Advance.Tests.Planning;

public sealed class LoadTests
{
    private static readonly Kind Van = Sized("van", 2450, 1.75, 4.2, 1.9) with { Role = Role.Truck, Payload = Given.Of(Mass.FromKilograms(1050), Gigs.Here) };

    [Fact]
    public void The_vehicle_is_on_the_pull_list_and_not_in_its_own_load()
    {
        var plan = Planner.Plan(In([Extra("box", 3)], Sized("box", 10, 0.5, 0.5, 0.5)));
        Assert.Contains(plan.Stock.Lines, line => line.Item == "van");
        Assert.Equal((30, 30), (plan.Load.Gross.Value!.Value.Kilograms, plan.Load.Weight.Value!.Value.Kilograms));
        Assert.Equal((3, 3), (plan.Load.Units.Value, plan.Load.Pieces.Value));
    }

    // Seven boxes of 0.5 x 0.5 m, three high: three piles on a floor of 1.75 m take 3 · 0.25 / 1.75 m.
    [Theory]
    [InlineData(3, 3)]
    [InlineData(9, 3)]
    [InlineData(2, 4)]
    [InlineData(1, 7)]
    public void Piles_are_as_high_as_the_stock_says_and_the_roof_allows(int stacks, int piles)
    {
        var box = Sized("box", 10, 0.5, 0.5, 0.6) with { Stacks = Given.Of(stacks, Gigs.Here) };
        Assert.Equal(piles * 0.25 / 1.75, Planner.Plan(In([Extra("box", 7)], box)).Load.Truck!.Floor.Value!.Value.Meters, 9);
    }

    // 7 boxes of 1.75 x 1 m, none on another, are 7 m of floor: three straps at 2.4 m each. 2.4 m is just one.
    [Theory]
    [InlineData(7, 1, 3)]
    [InlineData(1, 2.4, 1)]
    [InlineData(1, 2.5, 2)]
    public void There_is_a_strap_for_each_so_many_metres_of_load(int count, double deep, int straps) =>
        Assert.Equal(straps, Planner.Plan(In([Extra("box", count)], Sized("box", 10, 1.75, deep, 0.6))).Load.Truck!.Straps.Value);

    [Fact]
    public void Departments_are_the_load_in_parts()
    {
        var load = Planner.Plan(In([Extra("box", 3), Extra("drum", 2)], Sized("box", 10, 0.5, 0.5, 0.5), Sized("drum", 4, 0.5, 0.5, 0.5) with { Department = "other" })).Load;
        Assert.Equal(load.Pieces.Value, load.Departments.Sum(department => department.Pieces.Value));
        Assert.Equal(load.Gross.Value!.Value.Kilograms, load.Departments.Sum(department => department.Gross.Value!.Value.Kilograms), 9);
        Assert.Equal(8, load.Departments.Single(department => department.Name == "other").Weight.Value!.Value.Kilograms, 9);
    }

    [Fact]
    public void More_on_one_another_never_takes_more_floor() => Gen.Select(Gen.Int[1, 40], Gen.Int[1, 8]).Sample((count, stacks) =>
    {
        var box = Sized("box", 1, 0.5, 0.5, 0.2) with { Stacks = Given.Of(stacks, Gigs.Here) };
        var higher = box with { Stacks = Given.Of(stacks + 1, Gigs.Here) };
        var (floor, less) = (Floor(In([Extra("box", count)], box)), Floor(In([Extra("box", count)], higher)));
        Assert.True(less <= floor + 1e-9);
    });

    // On a trunk of 1.2 x 0.6 m that carries twice its 40 kg, crates of 0.6 x 0.4 m stand across: three to a level, as long as roof and weight allow.
    [Theory]
    [InlineData(1, 20, 0)]
    [InlineData(3, 20, 0)]
    [InlineData(4, 20, 0)]
    [InlineData(5, 20, 1)]
    [InlineData(1, 100, 1)]
    [InlineData(3, 10, 0)]
    [InlineData(9, 10, 1)]
    public void Smaller_things_stand_side_by_side_on_a_larger_one_that_carries_them(int crates, double kilograms, int onTheFloor)
    {
        var trunk = Sized("trunk", 40, 1.2, 0.6, 0.8) with { Stacks = Given.Of(3, Gigs.Here) };
        var crate = Sized("crate", kilograms, 0.6, 0.4, 0.5) with { Stacks = Given.Of(5, Gigs.Here) };
        var floor = Floor(In([Extra("trunk", 1), Extra("crate", crates)], trunk, crate)) * 1.75;
        Assert.Equal((1.2 * 0.6) + (onTheFloor * 0.6 * 0.4), floor, 9);
    }

    [Fact]
    public void What_nobody_says_how_it_stacks_stands_alone()
    {
        var box = Sized("box", 10, 0.5, 0.5, 0.2);
        Assert.Equal(4 * 0.25 / 1.75, Floor(In([Extra("box", 4)], box)), 9);
    }

    [Fact]
    public void What_travels_folded_is_loaded_folded()
    {
        var table = Sized("table", 12, 1.8, 0.8, 0.74) with { Travels = Given.Of(Metres(1.8, 0.8, 0.06), Gigs.Here) };
        Assert.Equal(1.8 * 0.8 * 0.06, Planner.Plan(In([Extra("table", 1)], table)).Load.Truck!.Volume.Value!.Value, 9);
    }

    [Fact]
    public void Two_vehicles_carry_together()
    {
        var brief = In([Extra("box", 15)], Sized("box", 100, 0.5, 0.5, 0.5));
        var two = brief with { Gig = brief.Gig with { Trucks = [Vehicle("Van"), Vehicle("Other van")] } };
        Assert.Contains(Planner.Plan(brief).Findings, finding => finding.Rule == "truck/overweight");
        Assert.DoesNotContain(Planner.Plan(two).Findings, finding => finding.Rule == "truck/overweight");
    }

    [Fact]
    public void What_is_needed_first_goes_in_last()
    {
        var deck = Sized("deck", 16, 2, 1, 0.09) with { Role = Role.Deck };
        var mic = Sized("mic", 1, 0.1, 0.1, 0.2) with { Role = Role.Microphone };
        var wash = Sized("wash", 3, 0.3, 0.3, 0.3) with { Role = Role.Fixture, Department = "lights" };
        var spare = Sized("odds", 3, 0.3, 0.3, 0.3) with { Department = "odds" };
        var brief = In([Extra("odds", 1)], deck, mic, wash, spare);
        var gig = brief.Gig with
        {
            Acts = [Gigs.Act("Solo", Gigs.Line(1, "mic"))],
            Stages = [new Stage("stage", Given.Of(Metres(4, 2, 0), Gigs.Here), default, null, new CountedItem(4, "deck"), null, null, [], Gigs.Here)],
            Lighting = Lighting.None with { Fixtures = [new FixtureRow(new NumberRange(1, 2), Given.Of("wash", Gigs.Here), "bar", "", null, "", Gigs.Here)] },
            People = [new Person("A Name", "", [], null, Given.Of(Moment.At(14, 0), Gigs.Here), Gigs.Here)],
        };
        Assert.Equal(["odds", "wash", "mic", "deck"], Planner.Plan(brief with { Gig = gig }).Load.InOrder.Select(row => row.Unit.Item));
    }

    private static double Floor(Brief brief) => Planner.Plan(brief).Load.Truck!.Floor.Value!.Value.Meters;

    private static Brief In(IReadOnlyList<Extra> extras, params Kind[] kinds) =>
        Gigs.Brief(Gigs.Gig() with { Extras = extras, Trucks = [Vehicle("Van")] }, [.. kinds, Van]);

    private static Truck Vehicle(string name) => new(name, Given.Of("van", Gigs.Here), null, null, Gigs.Here);

    private static Advance.Domain.Places.Size Metres(double width, double depth, double height) => new(Length.FromMeters(width), Length.FromMeters(depth), Length.FromMeters(height));

    private static Kind Sized(string id, double kilograms, double width, double depth, double height) => Gigs.Kind(id, 99) with
    {
        Weight = Given.Of(Mass.FromKilograms(kilograms), Gigs.Here, how: Known.Weighed),
        Size = Given.Of(Metres(width, depth, height), Gigs.Here),
    };

    private static Extra Extra(string item, int count) => new(item, Given.Of(count, Gigs.Here), null, "", Gigs.Here);
}
