namespace Advance.Sheets.Views;

/// <summary>The letters to all acts.</summary>
public sealed record ActLettersView(IReadOnlyList<ActLetterView> Acts);
