namespace Advance.Paper.Pictures;

/// <summary>Something drawn.</summary>
public abstract record Shape
{
    private protected Shape()
    {
    }

    /// <summary>How its outline is drawn. Default a normal line.</summary>
    public Pen Pen { get; init; } = Pen.Normal;

    /// <summary>What it is filled with. Default nothing.</summary>
    public Fill Fill { get; init; }
}
