namespace Advance.Paper.Setting;

/// <summary>Whether a line may begin with an atom.</summary>
internal enum LineStart
{
    /// <summary>It stays with what stands before it.</summary>
    Never,

    /// <summary>Where there is no room left.</summary>
    Allowed,

    /// <summary>After a hyphen: only where the whole word is wider than a line, so that a label is read in one piece.</summary>
    InWord,

    /// <summary>It always begins a line.</summary>
    Always,
}
