namespace Advance.Sheets.Views;

/// <summary>The cards of all stage boxes.</summary>
public sealed record StageBoxCardsView(IReadOnlyList<StageBoxCardView> Boxes);
