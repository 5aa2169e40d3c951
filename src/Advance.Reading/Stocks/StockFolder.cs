using Advance.Domain.Stocks;
using Advance.Reading.Files;
using Advance.Reading.Shapes;
using Advance.Reading.Tables;
using Advance.Reading.Yaml;

namespace Advance.Reading.Stocks;

/// <summary>Reads a stock: one file, or all YAML, CSV and XLSX files of a folder, in ordinal order of their names.</summary>
internal sealed class StockFolder(YamlFiles yaml, Reader reader)
{
    private readonly Dictionary<string, Kind> kinds = new(StringComparer.Ordinal);

    /// <summary>Reads the stock that a gig names.</summary>
    /// <returns>Null where a finding has been made instead.</returns>
    public Stock? Read(ScalarNode name)
    {
        if (!TreePath.TryResolve(name.At.File, name.Text, out var path))
        {
            reader.Fault(FileFindings.Outside(name.At, name.Text));
            return null;
        }

        if (reader.Files.List(path) is not { } names)
        {
            return ReadFile(path, name) ? new Stock(kinds) : null;
        }

        var files = names.Where(IsStock).Order(StringComparer.Ordinal).Select(file => TreePath.Join(path, file)).ToList();
        if (files.Count == 0)
        {
            reader.Fault(StockFindings.EmptyFolder(name.At, name.Text));
            return null;
        }

        var isWhole = true;
        foreach (var file in files)
        {
            isWhole &= ReadFile(file, name);
        }

        return isWhole ? new Stock(kinds) : null;
    }

    private static bool IsStock(string file) => TableNodes.IsTable(file)
        || file.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase) || file.EndsWith(".yml", StringComparison.OrdinalIgnoreCase);

    private bool ReadFile(string path, ScalarNode name)
    {
        if (TableNodes.IsTable(path))
        {
            return StockShape.Kinds.TryReadFile(path, name, reader, out var rows) && AddAll(rows);
        }

        return yaml.Open(path, name.At, path) is { } node && StockShape.It.TryRead(node, reader, out var read) && AddAll(read);
    }

    private bool AddAll(IReadOnlyList<Kind> read)
    {
        var isWhole = true;
        foreach (var kind in read)
        {
            isWhole &= kinds.TryAdd(kind.Id, kind) || reader.Fault(StockFindings.KindTwice(kind.At, kind.Id, kinds[kind.Id].At));
        }

        return isWhole;
    }
}
