namespace Advance.Planning;

/// <summary>
/// Solves a problem of circuits: by matching where a bound proves that nothing is better; else by moves and exchanges, and where it is small or
/// they leave a gap, by the solver, which starts from that.
/// </summary>
internal static class CircuitSolver
{
    // Matching with places as digits gets dear with the cube of what is matched.
    private const int MostMatched = 80;

    // What the solver gets through in a second or so.
    private const int MostSearched = 1500;

    // The same where the largest use is proven already: what is left are metres and outlets, which moves and exchanges see to.
    private const int MostSearchedForLess = 500;

    /// <summary>The best answer that was found; there always is one.</summary>
    public static CircuitAnswer Solve(CircuitProblem problem)
    {
        var matched = problem.Wishes.Count <= MostMatched ? CircuitMatching.Solve(problem) : null;
        if (matched is not null && CircuitScore.Of(problem, matched) is var score && CircuitBounds.Prove(problem, score))
        {
            return new CircuitAnswer(matched, score, IsProven: true, score.Use);
        }

        var allotted = CircuitAllotment.Solve(problem);
        return problem.Size <= (allotted.Score.IsWhole && allotted.Score.Use == allotted.LeastUse ? MostSearchedForLess : MostSearched) ? Search(problem, allotted) : allotted;
    }

    /// <summary>The solver's answer, whatever the bounds say; no worse than the first.</summary>
    public static CircuitAnswer Search(CircuitProblem problem, CircuitAnswer first)
    {
        var model = new CircuitModel(problem, first.Taken);
        if (model.Solve() is not { } answer)
        {
            return first;
        }

        var taken = model.Read(answer);
        var score = CircuitScore.Of(problem, taken);
        return answer.IsProven ? new CircuitAnswer(taken, score, IsProven: true, score.Use)
            : score.CompareTo(first.Score) <= 0 ? new CircuitAnswer(taken, score, IsProven: false, Math.Min(score.Use, CircuitAllotment.LeastUse(problem, score)))
            : first;
    }
}
