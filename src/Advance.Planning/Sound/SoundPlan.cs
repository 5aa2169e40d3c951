namespace Advance.Planning;

/// <summary>The sound system, placed.</summary>
/// <param name="Pieces">What it takes.</param>
/// <param name="Links">What feeds what, as far as it was written; the outputs that loudspeakers hang on are among them.</param>
/// <param name="Boxes">Stage boxes with the ports they have, in the order written.</param>
/// <param name="Stacks">What stands on the floor or the deck, each on its side.</param>
/// <param name="Things">What is drawn.</param>
public sealed record SoundPlan(
    IReadOnlyList<Piece> Pieces,
    IReadOnlyList<Link> Links,
    IReadOnlyList<PortBox> Boxes,
    IReadOnlyList<StackPlan> Stacks,
    IReadOnlyList<Placed> Things)
{
    /// <summary>Desks, stage boxes, processors and amplifiers, in the order written.</summary>
    public IReadOnlyList<SoundDevice> Devices { get; init; } = [];

    /// <summary>What is flown, each on its side.</summary>
    public IReadOnlyList<StackPlan> Hangs { get; init; } = [];

    /// <summary>Stacks and hangs: all that plays.</summary>
    public IReadOnlyList<StackPlan> Piles => field ??= [.. Stacks, .. Hangs];

    /// <summary>Heights and weights of the stacks.</summary>
    public IReadOnlyList<Stated> Figures { get; init; } = [];
}
