using Advance.Domain.Facts;
using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>What is patched to what.</summary>
/// <param name="Lines">Inputs, act by act, in the order of their channels; lines that are always up come last.</param>
/// <param name="Returns">Mixes, act by act, in the order of their numbers.</param>
/// <param name="Uses">How full each box is.</param>
/// <param name="Ports">All ports for lines; unknown where one box's are.</param>
/// <param name="ReturnPorts">All ports for returns; unknown where one box's are.</param>
/// <param name="Pieces">Microphones, DIs, stands, wedges.</param>
/// <param name="Links">From source to port, and from port to mix.</param>
/// <param name="Figures">Ports used and kept free, what is set up at once, and what is wanted of the desks.</param>
/// <param name="Chosen">Which port each line and each mix has.</param>
public sealed record PatchPlan(
    IReadOnlyList<PatchLine> Lines,
    IReadOnlyList<PatchReturn> Returns,
    IReadOnlyList<BoxUse> Uses,
    Figure<int> Ports,
    Figure<int> ReturnPorts,
    IReadOnlyList<Piece> Pieces,
    IReadOnlyList<Link> Links,
    IReadOnlyList<Stated> Figures,
    Choices Chosen)
{
    /// <summary>What is wanted of each desk.</summary>
    public IReadOnlyList<DeskUse> Desks { get; init; } = [];

    /// <summary>Whether there is anything to patch to: a stage box or a desk.</summary>
    public bool HasBoxes { get; init; }

    /// <summary>The open questions that the choice of ports rests on as a whole.</summary>
    public Doubts RestsOn { get; init; } = Doubts.None;
}
