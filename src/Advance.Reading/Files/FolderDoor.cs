namespace Advance.Reading.Files;

/// <summary>The files of a folder on disk. Nothing outside it is read, not even through a symbolic link inside it.</summary>
public sealed class FolderDoor : IFileDoor
{
    private readonly string root;

    /// <summary>Opens the door to a folder.</summary>
    /// <param name="root">The folder that holds the gig's tree; it may itself be a link.</param>
    public FolderDoor(string root)
    {
        var full = Path.GetFullPath(root);
        this.root = Path.TrimEndingDirectorySeparator(Directory.Exists(full) ? RealPath(full) : full);
    }

    /// <inheritdoc/>
    public FileRead Read(string path, int limit)
    {
        try
        {
            if (Inside(path) is not { } full)
            {
                return FileRead.Not(FileFault.Outside);
            }

            if (Directory.Exists(full))
            {
                return FileRead.Not(FileFault.Folder);
            }

            return File.Exists(full) ? ReadAtMost(full, limit) : FileRead.Not(FileFault.Missing);
        }
        catch (Exception refusal) when (refusal is IOException or UnauthorizedAccessException)
        {
            return FileRead.Not(FileFault.Unreadable);
        }
    }

    /// <inheritdoc/>
    public IReadOnlyList<string>? List(string folder)
    {
        try
        {
            return Inside(folder) is { } full && Directory.Exists(full)
                ? [.. Directory.EnumerateFiles(full).Select(file => Path.GetFileName(file))]
                : null;
        }
        catch (Exception refusal) when (refusal is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <inheritdoc/>
    public bool Exists(string path)
    {
        try
        {
            return Inside(path) is { } full && File.Exists(full);
        }
        catch (Exception refusal) when (refusal is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    // The stream is asked for one byte more than allowed: a file may grow, or say that it has no length.
    private static FileRead ReadAtMost(string full, int limit)
    {
        using var stream = new FileStream(full, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        if (stream.Length > limit)
        {
            return FileRead.Not(FileFault.TooLarge);
        }

        var bytes = new byte[Math.Min(limit, stream.Length) + 1];
        var count = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        return count > limit ? FileRead.Not(FileFault.TooLarge) : FileRead.Of(bytes.AsMemory(0, count));
    }

    private string? Inside(string path)
    {
        var full = Path.GetFullPath(Path.Combine(root, path));
        return IsUnderRoot(full) && IsUnderRoot(RealPath(full)) ? full : null;
    }

    private bool IsUnderRoot(string full) =>
        full.Equals(root, StringComparison.Ordinal)
        || (full.StartsWith(root, StringComparison.Ordinal) && full[root.Length] == Path.DirectorySeparatorChar);

    // Follows links from the top down, since a link may stand anywhere in the path and lead to a path with more of them.
    private static string RealPath(string full)
    {
        var real = Path.GetPathRoot(full) ?? "";
        foreach (var name in full[real.Length..].Split(Path.DirectorySeparatorChar, StringSplitOptions.RemoveEmptyEntries))
        {
            var next = Path.Combine(real, name);
            FileSystemInfo info = Directory.Exists(next) ? new DirectoryInfo(next) : new FileInfo(next);
            real = info.LinkTarget is not null && info.ResolveLinkTarget(returnFinalTarget: true) is { } target ? RealPath(target.FullName) : next;
        }

        return real;
    }
}
