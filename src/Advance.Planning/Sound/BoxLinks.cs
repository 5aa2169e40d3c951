using Advance.Domain.Facts;
using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>Links boxes to each other: what one hands on feeds the next.</summary>
internal static class BoxLinks
{
    /// <summary>The links of all stacks; none from a box that has nothing to hand on.</summary>
    public static IEnumerable<Link> Of(IReadOnlyList<StackPlan> stacks, SoundUnits units)
    {
        foreach (var (stack, chain) in stacks.SelectMany(stack => stack.Chains.Select(chain => (stack, chain))))
        {
            for (var index = 1; index < chain.Boxes.Count; index++)
            {
                var (before, box) = (chain.Boxes[index - 1], chain.Boxes[index]);
                if (!HandsOn(before, box))
                {
                    continue;
                }

                var signal = units.Takes(box.Piece.Name);
                yield return new Link(
                    Address.Of("link") / box.Piece.Name / "in",
                    units.End(new Port(before.Piece.Name, PortKind.Link, Number: null), signal),
                    units.End(new Port(box.Piece.Name, PortKind.Input, Number: null), signal),
                    signal,
                    stack.RestsOn,
                    stack.Stack.At);
            }
        }
    }

    // A box that no stock describes is taken to hand on what it gets; stock/too-few asks what it is.
    private static bool HandsOn(StackedBox before, StackedBox box)
    {
        if (before.Piece.Kind is not { Ports.Count: > 0 } kind)
        {
            return true;
        }

        var link = Signals.Row(kind, PortKind.Link);
        var input = Signals.Row(box.Piece.Kind, PortKind.Input);
        return link is not null && (input is null || input.Signal == link.Signal);
    }
}
