namespace Advance.Sheets.Views;

/// <summary>All hang sheets.</summary>
/// <param name="Hangs">One for each hang, in the order written.</param>
public sealed record HangsView(IReadOnlyList<HangView> Hangs);
