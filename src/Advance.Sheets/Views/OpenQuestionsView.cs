namespace Advance.Sheets.Views;

/// <summary>Everything that somebody must still answer.</summary>
/// <param name="Questions">What is needed first stands first, and of one day what most hangs on.</param>
/// <param name="NotJudged">Checks that could not be made.</param>
public sealed record OpenQuestionsView(IReadOnlyList<OpenQuestionsView.Line> Questions, IReadOnlyList<OpenQuestionsView.Check> NotJudged)
{
    /// <summary>One question.</summary>
    /// <param name="By">When the answer is needed; blank where nobody said.</param>
    /// <param name="Who">Who must answer.</param>
    /// <param name="Question">What it is about.</param>
    /// <param name="Now">What the plan goes by until then.</param>
    /// <param name="Hangs">What changes with the answer.</param>
    public sealed record Line(Cell By, Cell Who, Cell Question, Cell Now, Cell Hangs);

    /// <summary>A check that cannot be made.</summary>
    /// <param name="Weight"><c>stop</c> or <c>concern</c>.</param>
    /// <param name="Says">What is unknown.</param>
    /// <param name="Cure">What to ask for.</param>
    public sealed record Check(Cell Weight, Cell Says, Cell Cure);
}
