using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>Parts the boxes of a stack by what feeds them. A small stack is linked from box to box, from the floor up.</summary>
internal static class Chains
{
    /// <summary>The chains of one stack; tops and rear-facing boxes are in one of their own where the gig says what feeds them.</summary>
    /// <param name="stack">As written.</param>
    /// <param name="address">Of the stack, on its side.</param>
    /// <param name="boxes">From the floor up; what is no loudspeaker is left out.</param>
    /// <param name="side">0 for the first side as written, 1 for its twin.</param>
    public static IReadOnlyList<Chain> Of(Stack stack, Address address, IReadOnlyList<StackedBox> boxes, int side)
    {
        var parts = boxes.Where(box => box.IsLoudspeaker).ToLookup(box => PartOf(stack, box));
        return
        [
            .. Chain(ChainPart.Main, "fed-by", stack.FedBy),
            .. Chain(ChainPart.Tops, "tops-fed-by", stack.TopsFedBy),
            .. Chain(ChainPart.Rear, "rear-fed-by", stack.RearFedBy),
        ];

        IEnumerable<Chain> Chain(ChainPart part, string key, Given<PortRange>? written) =>
            parts[part].Any() ? [new Chain(address / key, part, [.. parts[part]], written, PortOf(written, side))] : [];
    }

    /// <summary>The port for one side: the first for the first, the second for its twin, one alone for both.</summary>
    public static Port? PortOf(Given<PortRange>? written, int side)
    {
        if (written is not { } given || !given.Is(out var ports))
        {
            return null;
        }

        var kind = ports.Kind ?? PortKind.Output;
        return ports.Numbers is { } numbers ? new Port(ports.Device, kind, numbers.Count == 1 ? numbers.First : numbers.First + side) : new Port(ports.Device, kind, Number: null);
    }

    private static ChainPart PartOf(Stack stack, StackedBox box) => (stack.RearFedBy, stack.TopsFedBy) switch
    {
        ({ }, _) when box.IsRearFacing => ChainPart.Rear,
        (_, { }) when !box.IsSub => ChainPart.Tops,
        _ => ChainPart.Main,
    };
}
