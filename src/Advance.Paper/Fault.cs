namespace Advance.Paper;

/// <summary>Something in a document that could not be printed as it stands.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Sheet">The id of the sheet; empty for the whole document.</param>
/// <param name="Place">The id or the first words of the block; may be empty.</param>
/// <param name="Text">One sentence that stands alone.</param>
public sealed record Fault(FaultKind Kind, string Sheet, string Place, string Text);
