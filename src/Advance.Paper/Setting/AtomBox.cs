namespace Advance.Paper.Setting;

/// <summary>Something in a line that is no word.</summary>
internal abstract record AtomBox
{
    private AtomBox()
    {
    }

    /// <summary>A box to tick.</summary>
    internal sealed record Tick : AtomBox;

    /// <summary>A line to write on; takes what is left of its line.</summary>
    internal sealed record Write : AtomBox;

    /// <summary>Words in a rounded outline.</summary>
    internal sealed record Outlined(ShapedWord[] Words) : AtomBox;

    /// <summary>A bar on a line of its own.</summary>
    internal sealed record Gauge(double Share, double? Policy) : AtomBox;

    /// <summary>The page of an id, known only when all pages are.</summary>
    internal sealed record Page(string Target) : AtomBox;
}
