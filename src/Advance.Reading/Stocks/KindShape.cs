using Advance.Domain.Facts;
using Advance.Domain.Stocks;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;
using UnitsNet;

namespace Advance.Reading.Stocks;

/// <summary>A kind of item.</summary>
internal static class KindShape
{
    private static readonly Shape<Role> Roles = Written.OneOf(
        "role",
        "what a kind is for",
        ("microphone", Role.Microphone),
        ("di", Role.DirectBox),
        ("stand", Role.Stand),
        ("stage-box", Role.StageBox),
        ("console", Role.Console),
        ("processor", Role.Processor),
        ("loudspeaker", Role.Loudspeaker),
        ("joint", Role.Joint),
        ("cable", Role.Cable),
        ("distribution", Role.Distribution),
        ("fixture", Role.Fixture),
        ("case", Role.Case),
        ("deck", Role.Deck),
        ("truck", Role.Truck),
        ("consumable", Role.Consumable),
        ("terminator", Role.Terminator),
        ("hazer", Role.Hazer));

    private static readonly Shape<Phantom> Phantoms = Written.OneOf(
        "phantom", "what 48 V does", ("harmless", Phantom.Harmless), ("needed", Phantom.Needed), ("harmful", Phantom.Harmful));

    private static readonly RecordShape<SerialRow> Serial = new("serial", "One piece by its number.", keys =>
    {
        var serial = keys.Needed("serial", Written.Name, "As on its plate.");
        var testDue = keys.Open("test-due", Written.Date, "When its next test is due.");
        return row => new SerialRow(serial(row), testDue(row), row.At);
    });

    private static readonly RecordShape<ModeRow> Mode = new("mode", "A way that a fixture may be set.", keys =>
    {
        var name = keys.Needed("mode", Written.Name, "The maker's name for it.");
        var slots = keys.Needed("slots", Written.Between("slots", 1, 512), "How many slots it takes.");
        return row => new ModeRow(name(row), slots(row));
    });

    public static readonly RecordShape<Kind> It = new("kind", "A kind of item: what is true of every piece of it.", keys =>
    {
        var name = keys.Needed("name", Written.Text, "As on the shelf label.");
        var department = keys.Optional("department", Written.Name, "Which part of the shop it belongs to; without it as the file says.");
        var role = keys.Defaulted("role", Roles, Role.Other, "What it is for the planner.", "nothing in particular");
        var owned = keys.Asked("owned", Written.Count, "How many the shop owns.");
        var repair = keys.Defaulted("out", Written.Count, 0, "How many of them are out for repair.", "0");
        var shelf = keys.Defaulted("shelf", Written.Name, "", "Where it lies.", "not said");
        var weight = keys.Open("weight", Written.WeighedWeight, "Of one piece; weighed, maker or estimated after it says how it is known.");
        var size = keys.Open("size", Written.Size, "Across, deep, high.");
        var travels = keys.Open("travels", Written.Size, "As it travels, folded or rolled; without it as its size.");
        var stacks = keys.Open("stacks", Written.Between("stacks", 1, 50), "How many may stand on one another in a truck.");
        var payload = keys.Open("payload", Written.Weight, "Of a vehicle, what it may carry with driver and fuel aboard.");
        var radio = keys.Defaulted("radio", Written.YesNo, false, "Whether it sends or receives by radio.", "no");
        var packs = keys.Optional("packs", Written.Packing, "How many go into which case; without it it travels loose.");
        var with = keys.Any("with", Written.List(Written.Counted), "What always goes with one of it.");
        var substitutes = keys.Any("substitutes", Written.List(Written.Name), "Ids of kinds that may stand in for it, best first.");
        var hireFrom = keys.Defaulted("hire-from", Written.Name, "", "Who hires it out.", "not known");
        var serials = keys.Any("serials", Written.Table(Serial), "Pieces by serial number.");
        var ports = keys.Any("ports", Written.Table(PortShape.It), "Rows of connectors.");
        var mains = keys.Optional("mains", MainsShape.It, "What it draws.");
        var phantom = keys.Optional("phantom", Phantoms, "Of a microphone or DI, what 48 V on the line does to it.");
        var loudspeaker = keys.Optional("loudspeaker", LoudspeakerShape.It, "What only a loudspeaker has.");
        var joint = keys.Optional("joint", JointShape.It, "Of a joint, the faces that it joins.");
        var standing = keys.Optional("standing", StabilityShape.It, "How it stands, and what the wind does to it.");
        var truss = keys.Optional("truss", RiggingKindShapes.Truss, "What only a section of truss has.");
        var hoist = keys.Optional("hoist", RiggingKindShapes.Hoist, "What only a chain hoist has.");
        var lifting = keys.Optional("lifting", RiggingKindShapes.Lifting, "Of a sling, steel, shackle or other part that bears, what it bears.");
        var frame = keys.Optional("flying-frame", FlyingShapes.Frame, "What only a flying frame has.");
        var cable = new CableKeys(keys);
        var outlets = keys.Any("outlets", Written.Table(OutletShape.It), "Of a distribution, its outlets.");
        var channels = keys.Open("channels", Written.Count, "Of a desk, how many channels it has.");
        var buses = keys.Open("buses", Written.Count, "Of a desk, how many mixes it can send to those on stage.");
        var modes = keys.Any("modes", Written.Table(Mode), "Of a fixture, its modes.");
        return row => new Kind
        {
            Id = row.Name,
            Name = name(row),
            At = row.At,
            Department = department(row) ?? "",
            Role = role(row),
            Owned = owned(row),
            OutForRepair = repair(row),
            Shelf = shelf(row),
            Weight = Weight(weight(row)),
            Size = size(row),
            Travels = travels(row),
            Stacks = stacks(row),
            Payload = payload(row),
            IsRadio = radio(row),
            Packs = packs(row),
            With = with(row),
            Substitutes = substitutes(row),
            HireFrom = hireFrom(row),
            Serials = serials(row),
            Ports = ports(row),
            Mains = mains(row),
            Phantom = phantom(row),
            Loudspeaker = loudspeaker(row),
            Joint = joint(row),
            Standing = standing(row),
            Truss = truss(row),
            Hoist = hoist(row),
            Lifting = lifting(row),
            FlyingFrame = frame(row),
            Cable = cable.Of(row),
            Outlets = outlets(row),
            Channels = channels(row),
            Buses = buses(row),
            Modes = modes(row),
        };
    });

    /// <summary>The weight, with how it is known.</summary>
    public static Given<Mass>? Weight(Given<Weighed>? weighed) => weighed switch
    {
        null => null,
        { IsKnown: true } known => Given.Of(known.Value.Weight, known.At, known.Doubt, known.Value.How),
        { } open => Given.Unknown<Mass>(open.At, open.Doubt!),
    };
}
