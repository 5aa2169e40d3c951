using Advance.Domain.Stocks;
using Advance.Reading.Shapes;

namespace Advance.Reading.Stocks;

/// <summary>One circuit of a distribution, or several alike.</summary>
internal static class OutletShape
{
    public static readonly RecordShape<OutletRow> It = new("outlet", "One circuit of a distribution, or several alike.", keys =>
    {
        var numbers = keys.Needed("outlet", Written.Numbers, "Which outlets, each a circuit.");
        var connector = keys.Needed("connector", Written.Name, "What plugs in.");
        var phase = keys.Defaulted("phase", Written.Name, "", "Which phase it is on: L1; between two of them L1-L2, with the neutral L1-L2-N.", "the only one, or all");
        var device = keys.Defaulted("device", Written.Name, "", "Protective device and curve.", "not said");
        var rating = keys.Asked("rating", Written.Current, "What the device allows.");
        var residual = keys.Asked("residual", Written.Current, "Rated residual current.");
        return row => new OutletRow(numbers(row), connector(row), phase(row), device(row), rating(row), residual(row), row.At);
    });
}
