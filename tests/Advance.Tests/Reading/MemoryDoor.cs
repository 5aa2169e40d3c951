using System.Text;
using Advance.Reading.Files;

namespace Advance.Tests.Reading;

/// <summary>Files in memory, listed in the order given or backwards.</summary>
internal sealed class MemoryDoor(IReadOnlyList<(string Path, byte[] Bytes)> files) : IFileDoor
{
    public static MemoryDoor Of(params (string Path, string Text)[] files) => new([.. files.Select(file => (file.Path, Encoding.UTF8.GetBytes(file.Text)))]);

    public MemoryDoor Backwards() => new([.. files.Reverse()]);

    public FileRead Read(string path, int limit)
    {
        var found = files.Where(file => file.Path == path).ToList();
        return found.Count == 0 ? FileRead.Not(files.Any(file => file.Path.StartsWith(path + "/", StringComparison.Ordinal)) ? FileFault.Folder : FileFault.Missing)
            : found[0].Bytes.Length > limit ? FileRead.Not(FileFault.TooLarge)
            : FileRead.Of(found[0].Bytes);
    }

    public IReadOnlyList<string>? List(string folder)
    {
        var start = folder.Length == 0 ? "" : folder + "/";
        var names = files.Where(file => file.Path.StartsWith(start, StringComparison.Ordinal)).Select(file => file.Path[start.Length..]).ToList();
        return names.Count == 0 ? null : [.. names.Where(name => !name.Contains('/'))];
    }

    public bool Exists(string path) => files.Any(file => file.Path == path);
}
