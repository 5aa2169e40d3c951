using Advance.Domain.Facts;
using Advance.Domain.Findings;

namespace Advance.Reading.Stocks;

/// <summary>What can be wrong with a stock as a whole, in words.</summary>
internal static class StockFindings
{
    public static Finding EmptyFolder(Mark at, string folder) =>
        new("reading/no-such-file", Severity.Error, at, $"The folder {folder} holds no stock", "Put YAML, CSV or XLSX files into it, or take its name out.");

    public static Finding KindTwice(Mark at, string id, Mark first) =>
        new("reading/duplicate-key", Severity.Error, at, $"{id} is in the stock already, at {first}", "Keep one of them, or give this one an id of its own.");
}
