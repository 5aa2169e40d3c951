namespace Advance.Planning;

/// <summary>What chains pull.</summary>
/// <param name="Levels">N, never less than 0.</param>
/// <param name="Heights">How high the truss lies at each hook, m; null where one chain alone carries it.</param>
/// <param name="Set">Which of them hold; the others are slack.</param>
internal sealed record PullOnlySolution(IReadOnlyList<double> Levels, IReadOnlyList<double>? Heights, IReadOnlyList<bool> Set);
