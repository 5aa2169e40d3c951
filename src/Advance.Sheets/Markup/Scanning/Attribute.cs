namespace Advance.Sheets.Markup.Scanning;

/// <summary>An attribute of a tag.</summary>
/// <param name="At">The first letter of its name.</param>
/// <param name="Name">As written.</param>
/// <param name="Value">With all references resolved.</param>
internal sealed record Attribute(int At, string Name, string Value);
