namespace Advance.Paper.Setting;

/// <summary>What a line is made of: a word or a box that is never parted.</summary>
/// <param name="Word">The word; null for a box.</param>
/// <param name="Box">The box; null for a word.</param>
/// <param name="Style">How the word, or text of the box's height, is set.</param>
/// <param name="Width">In 1/1000 pt.</param>
/// <param name="Space">Room before it where it does not begin a line, in 1/1000 pt.</param>
/// <param name="Break">Whether a line may begin with it.</param>
/// <param name="Link">Where it leads; null for nowhere.</param>
internal readonly record struct Atom(
    ShapedWord? Word,
    AtomBox? Box,
    TypeStyle Style,
    int Width,
    int Space,
    LineStart Break,
    string? Link);
