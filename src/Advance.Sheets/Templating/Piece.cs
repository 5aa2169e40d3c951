namespace Advance.Sheets.Templating;

/// <summary>A stretch of what a template wrote, and where it comes from.</summary>
/// <param name="Start">Its first character in the output.</param>
/// <param name="Frame">The use of the template that wrote it.</param>
/// <param name="Offset">The place in that template.</param>
/// <param name="IsCopied">True for text that stands in the template letter by letter; false for the value of an expression.</param>
internal sealed record Piece(int Start, Frame Frame, int Offset, bool IsCopied);
