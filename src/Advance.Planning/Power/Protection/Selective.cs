namespace Advance.Planning;

/// <summary>Whether only the nearer of two devices in a row opens.</summary>
public enum Selective
{
    /// <summary>Shown that it does.</summary>
    Yes,

    /// <summary>Only the maker's table can show it, or somebody has to say what the devices are.</summary>
    NotShown,

    /// <summary>The farther opens too, or alone.</summary>
    No,
}
