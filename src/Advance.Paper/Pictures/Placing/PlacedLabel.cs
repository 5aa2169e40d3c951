namespace Advance.Paper.Pictures.Placing;

/// <summary>Where a label stands.</summary>
/// <param name="Id">Of the symbol that it names.</param>
/// <param name="Label">What it says.</param>
/// <param name="Box">What it covers, in 0.1 mm.</param>
internal sealed record PlacedLabel(string Id, Label Label, Box Box)
{
    /// <summary>The line to what it names; null when it stands beside or in it.</summary>
    public Segment? Leader { get; init; }

    /// <summary>The number that stands for it, explained in the key; 0 when it stands for itself.</summary>
    public int Number { get; init; }

    /// <summary>True when it stands in its symbol, on clear ground.</summary>
    public bool IsInside { get; init; }
}
