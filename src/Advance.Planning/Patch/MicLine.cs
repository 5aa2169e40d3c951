using Advance.Domain.Facts;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Balanced lines for sound, and what plugs into them.</summary>
internal static class MicLine
{
    /// <summary>What a line plugs into where nobody wrote it down. Common practice, no source.</summary>
    public const string Connector = "xlr-3";

    // A kind that comes with itself, by way of others, ends here.
    private const int MostCompanionsDeep = 4;

    /// <summary>What plugs into the output of a source: its own, or that of what comes with it, as a receiver with a radio microphone.</summary>
    public static string OutputOf(Kind? kind, Stock stock) => (kind is null ? null : Output(kind, stock, MostCompanionsDeep)) ?? Connector;

    /// <summary>The inputs of what is heard with: how many, and what plugs in. Null where no stock says, or it comes without rows of ports.</summary>
    public static (int Count, string Connector)? InputsOf(Kind? kind)
    {
        if (kind is null || kind.Ports.Count == 0)
        {
            return null;
        }

        var rows = kind.Ports.Where(row => row.Port == PortKind.Input && row.Signal == BoxPort.Balanced).ToList();
        return (rows.Sum(row => row.Count), rows.FirstOrDefault()?.Connector ?? "");
    }

    /// <summary>What plugs into the connector that hands a line on; null where there is none, empty where no stock says.</summary>
    public static string? LinkOf(Kind? kind) => kind is null || kind.Ports.Count == 0
        ? ""
        : kind.Ports.FirstOrDefault(row => row.Port == PortKind.Link && row.Signal == BoxPort.Balanced)?.Connector;

    private static string? Output(Kind kind, Stock stock, int deep)
    {
        var own = kind.Ports.FirstOrDefault(row => row.Port == PortKind.Output && row.Signal == BoxPort.Balanced);
        return own is not null || deep == 0
            ? own?.Connector
            : kind.With.Select(item => stock.Find(item.Item)).OfType<Kind>().Select(other => Output(other, stock, deep - 1)).FirstOrDefault(found => found is not null);
    }
}
