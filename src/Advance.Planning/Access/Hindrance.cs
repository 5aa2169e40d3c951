namespace Advance.Planning;

/// <summary>What keeps something from coming through.</summary>
public enum Hindrance
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>The way is too narrow or too low for it.</summary>
    Opening,

    /// <summary>It does not go round the corner.</summary>
    Corner,

    /// <summary>It is heavier than a lift or a ramp carries.</summary>
    Load,

    /// <summary>Nobody knows how large it is.</summary>
    Size,
}
