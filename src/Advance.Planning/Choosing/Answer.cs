using Google.OrTools.Sat;

namespace Advance.Planning;

/// <summary>What a model was solved to.</summary>
/// <param name="solver">Holds the values.</param>
/// <param name="isProven">Whether nothing better exists, for every aim.</param>
internal sealed class Answer(CpSolver solver, bool isProven)
{
    /// <summary>Whether nothing better exists, for every aim.</summary>
    public bool IsProven => isProven;

    /// <summary>Whether a yes-or-no was answered with yes.</summary>
    public bool Is(BoolVar choice) => solver.BooleanValue(choice);

    /// <summary>The value of a variable or a sum.</summary>
    public long Of(LinearExpr expression) => solver.Value(expression);
}
