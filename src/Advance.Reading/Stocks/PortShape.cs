using Advance.Domain.Facts;
using Advance.Domain.Stocks;
using Advance.Reading.Shapes;

namespace Advance.Reading.Stocks;

/// <summary>A row of like connectors.</summary>
internal static class PortShape
{
    private static readonly Shape<PortKind> Direction = Written.OneOf(
        "port-kind", "a kind of port", ("in", PortKind.Input), ("out", PortKind.Output), ("link", PortKind.Link));

    public static readonly RecordShape<PortRow> It = new("port", "A row of like connectors.", keys =>
    {
        var port = keys.Needed("port", Direction, "In, out, or a link that hands on what came in.");
        var count = keys.Needed("count", Written.Between("port-count", 1, 1000), "How many, numbered from 1.");
        var signal = keys.Needed("signal", Written.Name, "What runs through: mic-line, line, network, lighting-control.");
        var connector = keys.Needed("connector", Written.Name, "Which plug fits.");
        var handsOn = keys.Defaulted("hands-on", Written.OneOf("hands-on", "what a link hands on", ("full", "full"), ("high-passed", "high-passed")), "", "What a link hands on.", "not said");
        return row => new PortRow(port(row), count(row), signal(row), connector(row), handsOn(row), row.At);
    });
}
