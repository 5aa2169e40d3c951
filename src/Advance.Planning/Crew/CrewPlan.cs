namespace Advance.Planning;

/// <summary>What is done by whom, in order.</summary>
/// <param name="Tasks">Load-in, in the order of the times.</param>
/// <param name="Figures">Minutes and hands.</param>
public sealed record CrewPlan(IReadOnlyList<CrewTask> Tasks, IReadOnlyList<Stated> Figures);
