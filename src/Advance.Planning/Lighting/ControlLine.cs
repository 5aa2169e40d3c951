using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>One line of lighting control: from the desk, or from a splitter, through one fixture after the other.</summary>
/// <param name="Address">Its name in the plan: that of its universe, and the splitter's output where there is one.</param>
/// <param name="Universe">What it carries.</param>
/// <param name="Fixtures">In the order they are linked.</param>
/// <param name="Splitter">What it comes out of; null where that is the desk.</param>
/// <param name="Output">The output of the splitter, from 1; 0 where it comes from the desk.</param>
/// <param name="Units">Unit loads on it.</param>
/// <param name="Planned">How many are planned at most.</param>
/// <param name="Most">How many the standard allows.</param>
public sealed record ControlLine(
    Address Address,
    int Universe,
    IReadOnlyList<FixturePlan> Fixtures,
    Piece? Splitter,
    int Output,
    Figure<int> Units,
    Figure<int> Planned,
    Figure<int> Most)
{
    /// <summary>Its name on paper.</summary>
    public string Name => Splitter is null ? $"universe {Universe}" : $"universe {Universe}, splitter out {Output}";

    /// <summary>Its numbers, each under its address.</summary>
    public IReadOnlyList<Stated> Figures =>
    [
        Stated.Of(Address / "units", $"{Name}, unit loads", Units),
        Stated.Of(Address / "planned", $"{Name}, unit loads planned at most", Planned),
    ];
}
