namespace Advance.Planning;

/// <summary>Solves a problem of circuits: by matching where a bound proves that nothing is better, else by the solver.</summary>
internal static class CircuitSolver
{
    /// <summary>The best answer that was found; there always is one.</summary>
    public static CircuitAnswer Solve(CircuitProblem problem)
    {
        var matched = CircuitMatching.Solve(problem);
        var score = CircuitScore.Of(problem, matched);
        return CircuitBounds.Prove(problem, score) ? new CircuitAnswer(matched, score, IsProven: true) : Search(problem, matched, score);
    }

    /// <summary>The solver's answer, whatever the bounds say; no worse than the first.</summary>
    public static CircuitAnswer Search(CircuitProblem problem, IReadOnlyList<CircuitOption?> first, CircuitScore score)
    {
        var model = new CircuitModel(problem, first);
        if (model.Solve() is not { } answer)
        {
            return new CircuitAnswer(first, score, IsProven: false);
        }

        var taken = model.Read(answer);
        var found = CircuitScore.Of(problem, taken);
        return found.CompareTo(score) <= 0 ? new CircuitAnswer(taken, found, answer.IsProven) : new CircuitAnswer(first, score, IsProven: false);
    }
}
