namespace Advance.Paper.Layout;

/// <summary>Something that is drawn on a page. All measures in 1/1000 pt, y downwards, from the corner of what it stands in.</summary>
internal abstract record Mark
{
    /// <summary>The layer of a picture that it belongs to; empty outside of pictures.</summary>
    public string Layer { get; init; } = "";

    /// <summary>Its upper edge.</summary>
    public abstract int Top { get; }

    /// <summary>Its lower edge.</summary>
    public abstract int Bottom { get; }

    /// <summary>The same elsewhere.</summary>
    public abstract Mark Moved(int x, int y);
}
