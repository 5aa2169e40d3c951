using System.Diagnostics.CodeAnalysis;
using Advance.Domain.Facts;

namespace Advance.Reading.Files;

/// <summary>All files that were read, by name.</summary>
public sealed class Sources
{
    private readonly SortedDictionary<string, Source> byFile = new(StringComparer.Ordinal);

    /// <summary>The names of the files, in ordinal order.</summary>
    public IReadOnlyCollection<string> Files => byFile.Keys;

    /// <summary>The line that a mark stands on; null where its file was not read as text or it stands nowhere.</summary>
    public Quote? Quote(Mark mark) => TryGet(mark.File, out var source) ? source.Quote(mark) : null;

    /// <summary>The source of a file.</summary>
    public bool TryGet(string file, [NotNullWhen(true)] out Source? source) => byFile.TryGetValue(file, out source);

    internal void Add(Source source) => byFile[source.File] = source;
}
