namespace Advance.Sheets.Markup.Subset;

/// <summary>A word that the class of an element can have beside the one that says what it is.</summary>
/// <param name="Word">As written.</param>
/// <param name="Means">What it does, for the guide.</param>
internal sealed record ClassWord(string Word, string Means);
