using Advance.Domain.Facts;
using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>A row of an input list, or of mixes: as many ports side by side in one box, counting up.</summary>
internal sealed record PortWish
{
    /// <summary>Its channels or mixes in order, at least one.</summary>
    public required IReadOnlyList<PortLine> Lines { get; init; }

    /// <summary>The channel or mix of the first line, from 1.</summary>
    public required int First { get; init; }

    /// <summary>The act it is up for; null for every act.</summary>
    public string? Act { get; init; }

    /// <summary>What somebody fixed by hand: a box, or the port of the first line; null where it is free to choose.</summary>
    public PortRange? Fixed { get; init; }

    /// <summary>What is heard, by which other acts' rows are the same source; empty where it cannot be shared.</summary>
    public string Source { get; init; } = "";

    /// <summary>Whether it only works on a balanced port: it needs 48 V.</summary>
    public bool NeedsBalanced { get; init; }

    /// <summary>How far it is to each box, in decimetres; a box that is not named is as near as any.</summary>
    public IReadOnlyDictionary<string, int> Leads { get; init; } = new Dictionary<string, int>(StringComparer.Ordinal);

    /// <summary>Its name among the wishes: that of its first line.</summary>
    public Address Address => Lines[0].Address;

    /// <summary>How many ports it wants.</summary>
    public int Count => Lines.Count;

    /// <summary>Whether both cannot have the same port: they are up at the same time.</summary>
    public bool IsUpWith(PortWish other) => Act is null || other.Act is null || Act == other.Act;

    /// <summary>Whether a port is what was fixed by hand for the first line.</summary>
    public bool IsAsFixed(Port port) => Fixed is not null && port.IsIn(Fixed, 0);

    /// <summary>Each line for itself, where the row finds no place side by side.</summary>
    public IEnumerable<PortWish> Parted() =>
        Lines.Select((line, index) => this with { Lines = [line], First = First + index, Fixed = Shifted(index), Source = "" });

    private PortRange? Shifted(int by) =>
        Fixed is { Numbers: { } numbers } ? Fixed with { Numbers = new NumberRange(numbers.First + by, numbers.First + by) } : Fixed;
}
