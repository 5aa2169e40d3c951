namespace Advance.Paper.Tree;

/// <summary>The number of the page on which an id stands, as for a list of contents. Leads there, too.</summary>
/// <param name="Target">An id in this document, without <c>#</c>; an unknown one is a fault and prints as <c>?</c>.</param>
/// <param name="Style">Default normal.</param>
public sealed record PageOf(string Target, TextStyle Style = TextStyle.Normal) : Inline;
