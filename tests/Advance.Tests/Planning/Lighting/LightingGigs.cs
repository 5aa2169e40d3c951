using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Tests.Planning;

/// <summary>Small rigs made in code.</summary>
internal static class LightingGigs
{
    private const string Signal = "lighting-control";

    public static Gig Gig(IReadOnlyList<Position> positions, params FixtureRow[] fixtures)
    {
        var desk = new Device("control", Given.Of("desk", Gigs.Here), At(0, -12), null, null, null, Gigs.Here);
        return Gigs.Gig() with { Lighting = new Lighting(desk, positions, fixtures) };
    }

    public static Brief Brief(Gig gig, params Kind[] more) => Gigs.Brief(gig, [Desk(2), Wash, .. more]);

    public static Kind Wash => Fixture("wash", 0.3, ("4-slot", 4), ("16-slot", 16), ("100-slot", 100));

    public static Kind Terminator => Gigs.Kind("end", 9) with { Role = Role.Terminator };

    public static Kind Splitter(int outputs) => Gigs.Kind("splitter", 9) with { Ports = [Port(PortKind.Input, 1), Port(PortKind.Output, outputs)] };

    public static Kind Desk(int universes) => Gigs.Kind("desk", 1) with { Role = Role.Console, Ports = [Port(PortKind.Output, universes)] };

    public static Kind Fixture(string id, double width, params (string Name, int Slots)[] modes) => Gigs.Kind(id, 99) with
    {
        Role = Role.Fixture,
        Size = Given.Of(new Size(Length.FromMeters(width), Length.FromMeters(width)), Gigs.Here),
        Ports = [Port(PortKind.Input, 1), Port(PortKind.Link, 1)],
        Modes = [.. modes.Select(mode => new ModeRow(mode.Name, mode.Slots))],
    };

    public static Position Position(string name, double x, double y, HeightFrom? trim = null) =>
        new(name, null, At(x, y), null, Given.Of(trim ?? new HeightFrom(Length.FromMeters(3), HeightFrom.Floor), Gigs.Here), Gigs.Here);

    public static FixtureRow Row(int first, int last, string position, string mode = "4-slot", ControlAddress? address = null, string item = "wash", int line = 1) =>
        new(new NumberRange(first, last), Given.Of(item, Gigs.Here), position, mode, address is { } fixedAt ? Given.Of(fixedAt, Gigs.Here) : null, "", Gigs.Here with { Line = line });

    public static Given<Place> At(double x, double y) => Given.Of<Place>(new Place.AtPoint(Length.FromMeters(x), Length.FromMeters(y), null), Gigs.Here);

    private static PortRow Port(PortKind kind, int count) => new(kind, count, Signal, "xlr-5", "", Gigs.Here);
}
