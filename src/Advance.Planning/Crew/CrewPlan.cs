using Advance.Domain.Facts;
using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>What is done by whom, in order.</summary>
/// <param name="Tasks">Load-in, in the order of the times.</param>
/// <param name="Figures">Minutes and hands.</param>
public sealed record CrewPlan(IReadOnlyList<CrewTask> Tasks, IReadOnlyList<Stated> Figures)
{
    /// <summary>Who can be given work, in the order written.</summary>
    public required IReadOnlyList<Worker> Workers { get; init; }

    /// <summary>How many are called, those whose call is still open among them.</summary>
    public required Figure<int> Called { get; init; }

    /// <summary>When everything stands, before lines are checked; null where no task is known, or one of them cannot be timed.</summary>
    public required Moment? LoadInEnd { get; init; }

    /// <summary>Getting it all out again; null where nobody says when that starts.</summary>
    public required LoadOut? LoadOut { get; init; }

    /// <summary>The heaviest thing that people lift; null where nothing is pulled, or nobody weighed it.</summary>
    public required Lift? HeaviestLift { get; init; }

    /// <summary>From each act to the next, in the order of their sets.</summary>
    public required IReadOnlyList<Changeover> Changeovers { get; init; }

    /// <summary>The open questions behind the order and the times of all tasks.</summary>
    public required Doubts RestsOn { get; init; }
}
