namespace Advance.Reading.Files;

/// <summary>
/// The one way to files. Every path is relative to the folder that holds the gig's tree, with forward slashes and without <c>.</c> or
/// <c>..</c>. No method throws for what a user can cause.
/// </summary>
public interface IFileDoor
{
    /// <summary>Reads a whole file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="limit">The most bytes that will be read; a larger file is refused unread.</param>
    FileRead Read(string path, int limit);

    /// <summary>The names of the files in a folder, without those in folders below, in no order; null where there is no such folder.</summary>
    IReadOnlyList<string>? List(string folder);

    /// <summary>Whether there is a file (not a folder) that may be read.</summary>
    bool Exists(string path);
}
