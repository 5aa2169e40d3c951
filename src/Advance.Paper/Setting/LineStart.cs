namespace Advance.Paper.Setting;

/// <summary>Whether a line may begin with an atom.</summary>
internal enum LineStart
{
    /// <summary>It stays with what stands before it.</summary>
    Never,

    /// <summary>Where there is no room left.</summary>
    Allowed,

    /// <summary>It always begins a line.</summary>
    Always,
}
