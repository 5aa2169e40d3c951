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
        var feeds = keys.Needed("feeds", Written.Text, "What hangs on it.");
        var note = keys.Defaulted("note", Written.Text, "", "Anything else.", "nothing");
        return row => new CircuitRow(distribution(row), number(row), feeds(row), note(row), row.At);
    });

    public static readonly RecordShape<Power> It = new("power", "Distributions and fixed circuits.", keys =>
    {
        var distributions = keys.Any("distributions", Written.Things(DeviceShape.It), "Boxes that split a service into circuits.");
        var circuits = keys.Any("circuits", Written.Table(Circuit), "Circuits fixed by hand.");
        return row => new Power(distributions(row), circuits(row));
    });
}
