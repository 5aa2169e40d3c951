namespace Advance.Paper.Layout;

/// <summary>The place of an id.</summary>
internal sealed record AnchorMark(int Y, string Id) : Mark
{
    /// <summary>What a bookmark calls it; null when it has none.</summary>
    public string? Bookmark { get; init; }

    public override int Top => Y;

    public override int Bottom => Y;

    public override Mark Moved(int x, int y) => this with { Y = Y + y };
}
