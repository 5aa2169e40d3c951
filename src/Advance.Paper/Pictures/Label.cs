namespace Advance.Paper.Pictures;

/// <summary>
/// Words that name a symbol. They are placed beside it or in it where there is room; otherwise in the margin with a leader; otherwise as a
/// number with a key under the picture.
/// </summary>
/// <param name="Lines">From top to bottom, at least one.</param>
public sealed record Label(IReadOnlyList<LabelLine> Lines)
{
    /// <summary>Labels with a higher rank choose first. Default 0.</summary>
    public int Rank { get; init; }

    /// <summary>True when it may stand inside its symbol. Default true.</summary>
    public bool MayStandInside { get; init; } = true;
}
