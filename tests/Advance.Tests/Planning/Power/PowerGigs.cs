using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Domain.Stocks;
using Advance.Domain.Venues;
using CsCheck;
using UnitsNet;

namespace Advance.Tests.Planning.Power;

/// <summary>Small gigs with power, made in code: things that draw, one to three boxes of circuits, one or two services.</summary>
internal static class PowerGigs
{
    private const string Blue = "16 A blue";
    private const string BigBlue = "32 A blue";

    /// <summary>Up to eight things, up to three boxes, up to two services; some things have an angle.</summary>
    public static readonly Gen<Brief> Any = Gen.Select(Unit.Array[1, 8], Gen.Int[0, 2].Array[1, 3], Gen.Int[1, 2], Gen.Int[0, 12])
        .Select((units, boxes, services, strangers) => Of(units, boxes, services, strangers));

    /// <summary>The same with one service and room for everything.</summary>
    public static readonly Gen<Brief> Roomy = Unit.Array[1, 6].Select(units => Of(units, [0, 0], services: 1, strangers: 0));

    private static Gen<(double Draw, int Angle, double X)> Unit => Gen.Select(Gen.Int[1, 120], Gen.Int[-30, 60], Gen.Int[-40, 40])
        .Select((draw, angle, x) => (draw / 10.0, angle, x / 10.0));

    /// <summary>A gig of things that draw so many amperes, boxes on services (0 and 1) or on another box (2).</summary>
    public static Brief Of(IReadOnlyList<(double Draw, int Angle, double X)> units, IReadOnlyList<int> boxes, int services, int strangers)
    {
        var things = units.Select((unit, index) => Thing($"Thing {index + 1}", unit.X)).ToList();
        List<Kind> kinds = [.. units.Select((unit, index) => Load($"Thing {index + 1}", unit.Draw, unit.Angle)), Box(BigBlue), Strip, Lead(Blue), Lead(BigBlue)];
        var devices = boxes.Select((feed, index) => Distribution($"PD{index + 1}", index > 0 && feed == 2 ? "strip" : "box", index > 0 && feed == 2 ? "PD1" : $"service {Math.Min(feed, services - 1)}", index));
        return Brief(things, kinds, [.. devices], [.. Enumerable.Range(0, services).Select(number => Service($"{number}", number == 0 ? strangers : 0))]);
    }

    public static Brief Brief(IReadOnlyList<Thing> things, IReadOnlyList<Kind> kinds, IReadOnlyList<Device> distributions, IReadOnlyList<Service> services)
    {
        var gig = Gigs.Gig() with { Around = things, Power = new(distributions, [], [.. services.Select(service => new ServicePlace(service.Name, Place(0, 6), Gigs.Here))]) };
        return Gigs.Brief(gig, [.. kinds]) with { Venue = Venue.Unknown with { Services = services } };
    }

    public static Thing Thing(string name, double x) => new(name, name, Place(x, 2), null, null, null, "", Gigs.Here);

    public static Kind Load(string id, double draw, int angle, bool isPhasor = true) => Gigs.Kind(id, 1) with
    {
        Mains = new Mains(Voltage("230", Phases.Single), Amperes(draw), Amperes(draw * 2), null, Amperes(10), Amperes(0.0005), Blue, Blue, Amperes(16), isPhasor ? Given.Of(Ratio.FromPercent(20), Gigs.Here) : null, isPhasor ? Given.Of(Angle.FromDegrees(angle), Gigs.Here) : null),
    };

    public static Kind Box(string inlet, string id = "box", int outlets = 4) => Gigs.Kind(id, 4) with
    {
        Role = Role.Distribution,
        Mains = new Mains(Voltage("230", Phases.Single), Amperes(0), Amperes(0), null, null, null, inlet, "", null, null),
        Outlets = [new OutletRow(new NumberRange(1, outlets), Blue, "", "C16", Amperes(16), Amperes(0.03), Gigs.Here)],
    };

    public static Device Distribution(string name, string item, string fedBy, int index) =>
        new(name, Given.Of(item, Gigs.Here), Place(index - 1, 3), Given.Of(Port(fedBy), Gigs.Here), null, null, Gigs.Here);

    public static PortRange Port(string text) => text.Split(" outlet ") is [var device, var number]
        ? new PortRange(device, PortKind.Outlet, new NumberRange(int.Parse(number, System.Globalization.CultureInfo.InvariantCulture), int.Parse(number, System.Globalization.CultureInfo.InvariantCulture)))
        : new PortRange(text);

    public static Service Service(string name, double strangers, Given<Supply>? supply = null) => new(
        name,
        Given.Of("there", Gigs.Here),
        supply ?? Voltage("230", Phases.Single),
        Amperes(32),
        Given.Of(BigBlue, Gigs.Here),
        Given.Of("TN-S", Gigs.Here),
        Amperes(0.3),
        strangers > 0 ? [new OtherLoad("urn", Amperes(strangers), null, Gigs.Here)] : [],
        null,
        Gigs.Here);

    public static Given<Supply> Voltage(string volts, Phases phases) => Given.Of(
        new Supply([new VoltageRange(ElectricPotential.FromVolts(double.Parse(volts, System.Globalization.CultureInfo.InvariantCulture)), ElectricPotential.FromVolts(230))], phases == Phases.Three ? ElectricPotential.FromVolts(400) : null, phases, [Frequency.FromHertz(50)]),
        Gigs.Here);

    public static Given<ElectricCurrent> Amperes(double amperes) => Given.Of(ElectricCurrent.FromAmperes(amperes), Gigs.Here);

    public static Kind Lead(string connector) => Gigs.Kind($"lead {connector}", 90) with
    {
        Role = Role.Cable,
        Cable = new Cable("mains", $"{connector} male", $"{connector} female", Given.Of(Length.FromMeters(20), Gigs.Here), "2.5 mm2", 3, Amperes(32)),
    };

    private static Kind Strip => Box(Blue, "strip");

    private static Given<Place> Place(double x, double y) =>
        Given.Of<Place>(new Place.AtPoint(Length.FromMeters(x), Length.FromMeters(y), null), Gigs.Here);
}
