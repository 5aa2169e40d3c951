namespace Advance.Planning;

/// <summary>All ports of a gig that lines may be patched to, in one row: channel 7 goes straight to the seventh.</summary>
internal sealed class PortField
{
    private readonly List<Port> ports;
    private readonly HashSet<Port> reserved;
    private readonly HashSet<Port> unbalanced;

    /// <summary>A field of ports.</summary>
    /// <param name="row">The ports to choose from, box by box.</param>
    /// <param name="onlyByHand">Ports that are taken only by those who fixed them: of a desk beside its stage boxes, of a box that no stock describes.</param>
    /// <param name="reserved">Ports that other devices hang on all day.</param>
    /// <param name="unbalanced">Ports that give no 48 V.</param>
    public PortField(IEnumerable<Port> row, IEnumerable<Port> onlyByHand, IEnumerable<Port> reserved, IEnumerable<Port> unbalanced)
    {
        ports = [.. row];
        Straight = ports.Count;
        ports.AddRange(onlyByHand.Except(ports).Distinct());
        this.reserved = [.. reserved];
        this.unbalanced = [.. unbalanced];
    }

    /// <summary>How many ports channels count straight through.</summary>
    public int Straight { get; }

    /// <summary>How many ports there are in all, with those that are only taken by hand.</summary>
    public int Count => ports.Count;

    /// <summary>The port at a place of the row, from 0.</summary>
    public Port this[int index] => ports[index];

    /// <summary>Whether so many lines can be patched side by side from there on: in one box, and with no port that others hang on.</summary>
    public bool IsFree(int start, int count) =>
        start + count <= Count
        && Enumerable.Range(start, count).All(index => !reserved.Contains(ports[index]))
        && ports[start + count - 1] is var last
        && last.Device == ports[start].Device
        && last.Number == ports[start].Number + count - 1;

    /// <summary>Whether one of so many ports gives no 48 V.</summary>
    public bool IsUnbalanced(int start, int count) => Enumerable.Range(start, count).Any(index => unbalanced.Contains(ports[index]));
}
