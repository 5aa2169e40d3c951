namespace Advance.Planning;

/// <summary>Which outlets were chosen.</summary>
/// <param name="Taken">For each wish the option that was taken; null for none.</param>
/// <param name="Score">How good it is.</param>
/// <param name="IsProven">Whether nothing better exists, in any aim.</param>
/// <param name="LeastUse">What utilisation above comfort no answer is below that is as good in all that matters more, per mille; no more than the score's.</param>
internal sealed record CircuitAnswer(IReadOnlyList<CircuitOption?> Taken, CircuitScore Score, bool IsProven, int LeastUse)
{
    /// <summary>How far the worst utilisation may be above the least there is, as a share of that least; 0 where it is comfortable or proven.</summary>
    public double Gap => (Score.Use - LeastUse) / (double)(LeastUse + CircuitScore.Comfortable);
}
