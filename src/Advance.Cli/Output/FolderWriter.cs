namespace Advance.Cli.Output;

/// <summary>Writes files whole or not at all: first beside their place, and into it only when every one of them stands.</summary>
internal static class FolderWriter
{
    private const string Unfinished = ".unfinished";
    private const string Before = ".before";

    /// <summary>Writes all files into a folder, which is made where it is missing. What else is in it stays.</summary>
    /// <param name="folder">Where to.</param>
    /// <param name="files">Names, with forward slashes for folders below, and contents.</param>
    /// <returns>Null when all was written; otherwise what the system said, and nothing was changed.</returns>
    public static string? Write(string folder, IReadOnlyList<(string Name, ReadOnlyMemory<byte> Bytes)> files)
    {
        var place = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder));
        var stage = place + Unfinished;
        try
        {
            WriteAll(stage, files);
            if (Directory.Exists(place))
            {
                Replace(place, stage, files);
            }
            else
            {
                Directory.Move(stage, place);
            }

            return null;
        }
        catch (Exception refusal) when (refusal is IOException or UnauthorizedAccessException)
        {
            return refusal.Message;
        }
        finally
        {
            Remove(stage);
        }
    }

    private static void WriteAll(string stage, IReadOnlyList<(string Name, ReadOnlyMemory<byte> Bytes)> files)
    {
        foreach (var (name, bytes) in files)
        {
            var path = Path.Combine(stage, name);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            using var file = new FileStream(path, FileMode.Create, FileAccess.Write, FileShare.None);
            file.Write(bytes.Span);

            // A full disk may show only when the file is flushed.
            file.Flush(flushToDisk: true);
        }
    }

    // Puts each file in its place, and takes all of them out again where one cannot be put.
    private static void Replace(string place, string stage, IReadOnlyList<(string Name, ReadOnlyMemory<byte> Bytes)> files)
    {
        var put = new Stack<string>();
        try
        {
            foreach (var (name, _) in files)
            {
                var path = Path.Combine(place, name);
                Directory.CreateDirectory(Path.GetDirectoryName(path)!);
                if (File.Exists(path))
                {
                    File.Move(path, path + Before, overwrite: true);
                }

                put.Push(path);
                File.Move(Path.Combine(stage, name), path);
            }
        }
        catch (Exception refusal) when (refusal is IOException or UnauthorizedAccessException)
        {
            foreach (var path in put)
            {
                PutBack(path);
            }

            throw;
        }

        foreach (var path in put)
        {
            File.Delete(path + Before);
        }
    }

    private static void PutBack(string path)
    {
        if (File.Exists(path + Before))
        {
            File.Move(path + Before, path, overwrite: true);
        }
        else if (File.Exists(path))
        {
            File.Delete(path);
        }
    }

    private static void Remove(string stage)
    {
        try
        {
            if (Directory.Exists(stage))
            {
                Directory.Delete(stage, recursive: true);
            }
        }
        catch (Exception refusal) when (refusal is IOException or UnauthorizedAccessException)
        {
            // What cannot be written to cannot be cleaned either; the first refusal is what the user needs to see.
        }
    }
}
