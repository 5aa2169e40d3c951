namespace Advance.Reading.Files;

/// <summary>Why a file was not read.</summary>
public enum FileFault
{
    /// <summary>It was read.</summary>
    None,

    /// <summary>There is no such file.</summary>
    Missing,

    /// <summary>It is a folder.</summary>
    Folder,

    /// <summary>It is larger than the limit.</summary>
    TooLarge,

    /// <summary>It lies outside the folder that holds the gig's tree, or a link in its path leads there.</summary>
    Outside,

    /// <summary>The system refused: no permission, a broken disk.</summary>
    Unreadable,
}
