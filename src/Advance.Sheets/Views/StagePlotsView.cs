namespace Advance.Sheets.Views;

/// <summary>All stage plots.</summary>
/// <param name="Plots">The whole stage first, where it has a plot of its own; then act by act.</param>
public sealed record StagePlotsView(IReadOnlyList<StagePlotView> Plots);
