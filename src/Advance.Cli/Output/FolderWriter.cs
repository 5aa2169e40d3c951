namespace Advance.Cli.Output;

/// <summary>Writes files whole or not at all: first beside their place, and into it only when every one of them stands.</summary>
internal static class FolderWriter
{
    private const string Unfinished = ".unfinished";

    /// <summary>Writes all files into a folder, which is made where it is missing.</summary>
    /// <param name="folder">Where to.</param>
    /// <param name="files">Names without folders, and contents.</param>
    /// <returns>Null when all was written; otherwise what the system said, and nothing was changed.</returns>
    public static string? Write(string folder, IReadOnlyList<(string Name, ReadOnlyMemory<byte> Bytes)> files)
    {
        var isNew = !Directory.Exists(folder);
        try
        {
            Directory.CreateDirectory(folder);
            foreach (var (name, bytes) in files)
            {
                WriteThrough(Path.Combine(folder, name + Unfinished), bytes.Span);
            }

            foreach (var (name, _) in files)
            {
                File.Move(Path.Combine(folder, name + Unfinished), Path.Combine(folder, name), overwrite: true);
            }

            return null;
        }
        catch (Exception refusal) when (refusal is IOException or UnauthorizedAccessException)
        {
            CleanUp(folder, files, isNew);
            return refusal.Message;
        }
    }

    // A full disk may show only when the file is flushed.
    private static void WriteThrough(string path, ReadOnlySpan<byte> bytes)
    {
        using var file = new FileStream(path, FileMode.Create, FileAccess.Write, FileShare.None);
        file.Write(bytes);
        file.Flush(flushToDisk: true);
    }

    private static void CleanUp(string folder, IReadOnlyList<(string Name, ReadOnlyMemory<byte> Bytes)> files, bool isNew)
    {
        try
        {
            foreach (var (name, _) in files)
            {
                File.Delete(Path.Combine(folder, name + Unfinished));
            }

            if (isNew && Directory.Exists(folder))
            {
                Directory.Delete(folder);
            }
        }
        catch (Exception refusal) when (refusal is IOException or UnauthorizedAccessException)
        {
            // What cannot be written to cannot be cleaned either; the first refusal is what the user needs to see.
        }
    }
}
