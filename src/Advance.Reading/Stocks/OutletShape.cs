using Advance.Domain.Stocks;
using Advance.Reading.Shapes;

namespace Advance.Reading.Stocks;

/// <summary>One circuit of a distribution, or several alike.</summary>
internal static class OutletShape
{
    /// <summary>Types of residual-current devices, each of which sees what those before it see.</summary>
    public static readonly Shape<string> ResidualType = Written.OneOf("residual-type", "a type of residual-current device", ("AC", "AC"), ("A", "A"), ("F", "F"), ("B", "B"));

    public static readonly RecordShape<OutletRow> It = new("outlet", "One circuit of a distribution, or several alike.", keys =>
    {
        var numbers = keys.Needed("outlet", Written.Numbers, "Which outlets, each a circuit.");
        var connector = keys.Needed("connector", Written.Name, "What plugs in.");
        var phase = keys.Defaulted("phase", Written.Name, "", "Which phase it is on: L1; between two of them L1-L2, with the neutral L1-L2-N.", "the only one, or all");
        var device = keys.Defaulted("device", Written.Name, "", "Protective device and curve.", "not said");
        var rating = keys.Asked("rating", Written.Current, "What the device allows.");
        var residual = keys.Asked("residual", Written.Current, "Rated residual current.");
        var residualType = keys.Open("residual-type", ResidualType, "Type of its residual-current device: what kinds of current it sees.");
        var residualDelay = keys.Open("residual-delay", Written.Duration, "How long its residual-current device waits; 0 s for one that does not.");
        var breaks = keys.Open("breaks", Written.Current, "What its device can break.");
        return row => new OutletRow(numbers(row), connector(row), phase(row), device(row), rating(row), residual(row), row.At)
        {
            ResidualType = residualType(row),
            ResidualDelay = residualDelay(row),
            Breaks = breaks(row),
        };
    });
}
