using Advance.Domain.Stocks;
using Advance.Reading.Shapes;
using Advance.Reading.Tables;

namespace Advance.Reading.Stocks;

/// <summary>A stock file.</summary>
internal static class StockShape
{
    /// <summary>The kinds of a file: in YAML under <c>kinds</c>, or all rows of a CSV or XLSX file.</summary>
    public static readonly TableShape<Kind> Kinds = Written.TableOfThings(KindShape.It, "id");

    public static readonly RecordShape<IReadOnlyList<Kind>> It = new("stock", "A file of the stock; all files of its folder are read.", keys =>
    {
        var department = keys.Defaulted("department", Written.Name, "", "Of all kinds in this file that do not name their own.", "not said");
        var kinds = keys.Any("kinds", Kinds, "Kinds of item, by id.");
        return row => [.. kinds(row).Select(kind => kind.Department.Length > 0 ? kind : kind with { Department = department(row) })];
    });
}
