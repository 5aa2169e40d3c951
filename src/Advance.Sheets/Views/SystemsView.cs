namespace Advance.Sheets.Views;

/// <summary>All system sheets.</summary>
/// <param name="Sheets">One for each stack, in the order written; then one for all that are a single box that one person sets.</param>
public sealed record SystemsView(IReadOnlyList<SystemsView.Sheet> Sheets)
{
    /// <summary>One sheet.</summary>
    /// <param name="Id">Of the sheet.</param>
    /// <param name="Title">Of the sheet.</param>
    /// <param name="Stacks">One, or several that are a box each.</param>
    /// <param name="RestsOn">The open questions that several hang on, told once; blank where there is one stack, which tells its own.</param>
    public sealed record Sheet(string Id, string Title, IReadOnlyList<SystemView> Stacks, Cell RestsOn);
}
