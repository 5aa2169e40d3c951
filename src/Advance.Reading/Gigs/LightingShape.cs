using Advance.Domain.Gigs;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>Fixtures, where they are, and what runs them.</summary>
internal static class LightingShape
{
    public static readonly RecordShape<Position> Position = new("position", "A stand, pipe or truss that carries fixtures.", keys =>
    {
        var sides = keys.Optional("sides", Written.Sides, "SR SL makes a mirrored pair.");
        var place = keys.Asked("place", Written.Place, "Where it is; of a pair, each one. At a truss of the rigging, that truss is it, with its trim and length.");
        var item = keys.Open("item", Written.Name, "What carries; left out where it is in the house.");
        var trim = keys.Open("trim", Written.Height, "How high.");
        var length = keys.Open("length", Written.Length, "How long a pipe or truss is; fixtures are spread along it.");
        var ballast = keys.Any("ballast", Written.Table(BallastShape.It), "Of a stand, what keeps it from tipping or sliding.");
        return row => new Position(row.Name, sides(row), place(row), item(row), trim(row), row.At) { Length = length(row), Ballast = ballast(row) };
    });

    public static readonly RecordShape<FixtureRow> Fixture = new("fixture", "Fixtures of one kind in one position.", keys =>
    {
        var numbers = keys.Needed("name", Written.Numbers, "Their numbers on the desk.");
        var item = keys.Asked("item", Written.Name, "Their kind in the stock.");
        var position = keys.Needed("position", Written.Name, "Where: the name of a position, with its side for a pair.");
        var mode = keys.Defaulted("mode", Written.Text, "", "The maker's mode.", "not said");
        var address = keys.Open("address", Written.As(ControlAddresses.Address), "Universe and first slot of the first of them, the others follow on; without it that is worked out.");
        var purpose = keys.Defaulted("purpose", Written.Text, "", "What it lights.", "not said");
        return row => new FixtureRow(numbers(row), item(row), position(row), mode(row), address(row), purpose(row), row.At);
    });

    public static readonly RecordShape<Lighting> It = new("lighting", "Fixtures, where they are, and what runs them.", keys =>
    {
        var control = keys.Optional("control", DeviceShape.It, "The desk.");
        var positions = keys.Any("positions", Written.Things(Position), "Where fixtures stand or hang.");
        var fixtures = keys.Any("fixtures", Written.Table(Fixture), "What is there.");
        return row => new Lighting(control(row), positions(row), fixtures(row));
    });
}
