namespace Advance.Sheets.Views;

/// <summary>All system sheets.</summary>
/// <param name="Stacks">One for each stack, in the order written.</param>
public sealed record SystemsView(IReadOnlyList<SystemView> Stacks);
