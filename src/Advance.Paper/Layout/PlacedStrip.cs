namespace Advance.Paper.Layout;

/// <summary>A strip on a page.</summary>
/// <param name="Strip">The strip.</param>
/// <param name="Y">Its upper edge from the top of the paper, in 1/1000 pt.</param>
/// <param name="IsRepeated">True for a head that was on an earlier page, too.</param>
internal readonly record struct PlacedStrip(Strip Strip, int Y, bool IsRepeated);
