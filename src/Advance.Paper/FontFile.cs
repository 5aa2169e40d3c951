namespace Advance.Paper;

/// <summary>A font that is asked when the built-in one lacks a letter.</summary>
/// <param name="Name">As faults name it.</param>
/// <param name="Bytes">A whole TTF or OTF file.</param>
public sealed record FontFile(string Name, ReadOnlyMemory<byte> Bytes)
{
    /// <summary>True for the bold weight. A letter that no bold font has is taken from a regular one. Default false.</summary>
    public bool IsBold { get; init; }
}
