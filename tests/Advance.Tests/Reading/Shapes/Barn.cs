using Advance.Domain.Facts;
using Advance.Domain.Places;
using Advance.Reading.Shapes;
using UnitsNet;

namespace Advance.Tests.Reading.Shapes;

/// <summary>A record made for tests, with a key of every sort.</summary>
internal sealed record Barn(
    string Name,
    Given<Length> Height,
    Given<Mass>? Limit,
    Sides? Sides,
    string? Note,
    int Steps,
    IReadOnlyList<CountedItem> Brings,
    IReadOnlyList<Given<SetTime>> Sets,
    IReadOnlyList<Barn> Inner,
    IReadOnlyList<Line> Lines,
    IReadOnlyList<Line> Named,
    Given<IReadOnlyList<Line>> Points,
    Place? Place,
    Mark At)
{
    public static readonly RecordShape<Line> LineShape = new("line", "One line.", keys =>
    {
        var number = keys.Needed("no", Written.Numbers, "Number.");
        var source = keys.Needed("source", Written.Text, "Source.");
        var weight = keys.Asked("weight", Written.Weight, "Weight.");
        var tags = keys.Any("tags", Written.List(Written.Name), "Tags.");
        return row => new Line(row.Name, number(row), source(row), weight(row), tags(row), row.At);
    });

    public static readonly RecordShape<Barn> Shape = new("barn", "A barn.", keys =>
    {
        var name = keys.Needed("name", Written.Text, "Name.");
        var height = keys.Asked("height", Written.Length, "Height.");
        var limit = keys.Open("limit", Written.Weight, "Limit.");
        var sides = keys.Optional("sides", Written.Sides, "Sides.");
        var note = keys.Optional("note", Written.Text, "Note.");
        var steps = keys.Defaulted("steps", Written.Count, 2, "Steps.", "2");
        var brings = keys.Any("brings", Written.List(Written.Counted), "Brings.");
        var sets = keys.Any("sets", Written.ListOfGiven(Written.SetTime), "Sets.");
        var inner = keys.Any("inner", Written.Things(new LaterShape<Barn>(() => Shape!)), "Inner.");
        var lines = keys.Any("lines", Written.Table(LineShape), "Lines.");
        var named = keys.Any("named", Written.TableOfThings(LineShape, "id"), "Named lines.");
        var points = keys.Asked("points", Written.Table(LineShape), "Points.");
        var place = keys.Optional("place", Written.Place, "Place.");
        return row => new Barn(
            name(row), height(row), limit(row), sides(row), note(row), steps(row), brings(row), sets(row), inner(row), lines(row), named(row), points(row), place(row), row.At);
    });
}
