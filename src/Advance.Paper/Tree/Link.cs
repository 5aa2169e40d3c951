namespace Advance.Paper.Tree;

/// <summary>Text that leads somewhere.</summary>
/// <param name="Target"><c>#</c> and an id in this document, or an address with http, https, mailto or tel. All else is a fault and prints as plain text.</param>
/// <param name="Text">What it says.</param>
public sealed record Link(string Target, IReadOnlyList<Inline> Text) : Inline;
