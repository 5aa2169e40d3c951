namespace Advance.Paper.Setting;

/// <summary>Weight, size and shade of letters.</summary>
/// <param name="Size">In 1/1000 pt, over 0.</param>
/// <param name="IsStrong">True for bold.</param>
/// <param name="Shade">How dark.</param>
internal readonly record struct TypeStyle(int Size, bool IsStrong, Shade Shade)
{
    /// <summary>Height of a capital letter in 1/1000 pt.</summary>
    public int Cap => (int)(Size * BuiltIn.CapHeight);
}
