using Advance.Domain.Gigs;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>Distributions and circuits.</summary>
internal static class PowerShape
{
    public static readonly RecordShape<CircuitRow> Circuit = new("circuit", "A circuit fixed by hand.", keys =>
    {
        var distribution = keys.Needed("distribution", Written.Name, "Which distribution.");
        var number = keys.Open("circuit", Written.Count, "Which of its circuits; without it that is worked out.");
        var feeds = keys.Needed("feeds", Written.Text, "What hangs on it: a stack, a lighting position, a device, a thing of an act, a distribution, wedges; several with commas, linked one to the next.");
        var note = keys.Defaulted("note", Written.Text, "", "Anything else.", "nothing");
        return row => new CircuitRow(distribution(row), number(row), feeds(row), note(row), row.At);
    });

    private static readonly RecordShape<BondRow> Bond = new("bond", "A structure and its bond.", keys =>
    {
        var structure = keys.Needed("structure", Written.Text, "Deck, truss, tower, barrier; the name of a lighting position, or trusses for all of them; several with commas.");
        var to = keys.Asked("to", Written.Text, "Where its bonding conductor goes; none where there is none.");
        return row => new BondRow(structure(row), to(row), row.At);
    });

    public static readonly RecordShape<Power> It = new("power", "Distributions and fixed circuits.", keys =>
    {
        var distributions = keys.Any("distributions", Written.Things(DeviceShape.It), "Boxes that split a service into circuits.");
        var circuits = keys.Any("circuits", Written.Table(Circuit), "Circuits fixed by hand.");
        var services = keys.Any("services", Written.Things(ServicePlaceShape.It), "Where the venue's services come out, by name.");
        var bonds = keys.Any("bonds", Written.Table(Bond), "Structures with electrical things on them, and to what each is bonded.");
        var joined = keys.Open("earths-joined", Written.Text, "How the earths of several services are joined, or by how much all metal of one is kept from the other.");
        return row => new Power(distributions(row), circuits(row), services(row)) { Bonds = bonds(row), EarthsJoined = joined(row) };
    });
}
