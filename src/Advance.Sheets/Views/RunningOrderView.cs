namespace Advance.Sheets.Views;

/// <summary>Who plays when, to be read from across the stage.</summary>
/// <param name="Lines">Sets, and what else happens between doors and the end, in the order of the times.</param>
public sealed record RunningOrderView(IReadOnlyList<RunningOrderView.Line> Lines)
{
    /// <summary>One line.</summary>
    /// <param name="Time">From, or from and to.</param>
    /// <param name="What">Act, or what happens.</param>
    /// <param name="IsSet">Whether it is a set; the rest is set smaller.</param>
    public sealed record Line(string Time, string What, bool IsSet);
}
