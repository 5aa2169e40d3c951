namespace Advance.Sheets.Views;

/// <summary>The sheets of all distributions.</summary>
public sealed record DistributionsView(IReadOnlyList<DistributionView> Boxes);
