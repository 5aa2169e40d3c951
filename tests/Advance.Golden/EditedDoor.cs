using System.Text;
using Advance.Reading.Files;

namespace Advance.Golden;

/// <summary>Another door with some files rewritten, or taken away.</summary>
internal sealed class EditedDoor(IFileDoor door) : IFileDoor
{
    private readonly Dictionary<string, string?> edited = new(StringComparer.Ordinal);

    /// <summary>Puts another text in the place of a file's; null takes it away.</summary>
    public EditedDoor With(string path, string? text)
    {
        edited[path] = text;
        return this;
    }

    public string Text(string path) => Encoding.UTF8.GetString(Read(path, int.MaxValue).Bytes.Span);

    public FileRead Read(string path, int limit) => !edited.TryGetValue(path, out var text)
        ? door.Read(path, limit)
        : text is null ? FileRead.Not(FileFault.Missing) : FileRead.Of(Encoding.UTF8.GetBytes(text));

    public IReadOnlyList<string>? List(string folder) => door.List(folder);

    public bool Exists(string path) => edited.TryGetValue(path, out var text) ? text is not null : door.Exists(path);
}
