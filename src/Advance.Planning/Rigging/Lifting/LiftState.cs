using Advance.Handbook;

namespace Advance.Planning;

/// <summary>The forces of one case.</summary>
/// <param name="Case">The case.</param>
/// <param name="Levels">What each chain pulls, N, never less than 0.</param>
/// <param name="Diagram">Shear and moment along the truss; null where it tips and hangs askew.</param>
/// <param name="Solution">How it lies when all hooks are level; null in the other cases, and where one chain alone carries it.</param>
public sealed record LiftState(LiftCase Case, IReadOnlyList<double> Levels, BeamDiagram? Diagram, BeamSolution? Solution)
{
    /// <summary>Whether the truss tips until its centre of gravity hangs under one hoist: then all of it hangs there, and how it bends is not known.</summary>
    public bool Tips => Diagram is null;

    /// <summary>The hoists that carry nothing, from 0.</summary>
    public IReadOnlyList<int> Slack => [.. Enumerable.Range(0, Levels.Count).Where(hoist => Levels[hoist] == 0)];
}
