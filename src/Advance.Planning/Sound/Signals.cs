using Advance.Domain.Facts;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>What runs through the ports of a sound system.</summary>
internal static class Signals
{
    /// <summary>Balanced sound of either level.</summary>
    public const string MicLine = "mic-line";

    /// <summary>What drives a passive box.</summary>
    public const string Speaker = "speaker";

    /// <summary>Control, or sound in packets.</summary>
    public const string Network = "network";

    /// <summary>Whether sound runs through, and not control.</summary>
    public static bool IsSound(string signal) => signal is not (Network or "lighting-control");

    /// <summary>The first row of ports for sound of that kind; null where there is none, or no stock says.</summary>
    public static PortRow? Row(Kind? kind, PortKind port) => kind?.Ports.FirstOrDefault(row => row.Port == port && IsSound(row.Signal));

    /// <summary>How many ports for sound of that kind; null where no stock says.</summary>
    public static int? Count(Kind? kind, PortKind port) => kind is null || kind.Ports.Count == 0
        ? null
        : kind.Ports.Where(row => row.Port == port && IsSound(row.Signal)).Sum(row => row.Count);
}
