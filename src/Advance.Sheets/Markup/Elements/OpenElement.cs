namespace Advance.Sheets.Markup.Elements;

/// <summary>An element whose closing tag has not come yet.</summary>
/// <param name="At">Its opening tag.</param>
/// <param name="Name">Its name as written.</param>
/// <param name="Element">Null for one that the subset does not know: what stands in it is read as if the tag were not there.</param>
/// <param name="Holder">The element that takes what comes: itself, or the nearest one that is known.</param>
internal sealed record OpenElement(int At, string Name, Element? Element, Element Holder);
