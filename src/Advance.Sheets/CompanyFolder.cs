namespace Advance.Sheets;

/// <summary>What a company puts in the place of what is shipped. It comes as text and bytes: this room opens no files.</summary>
/// <param name="Templates">Templates and partials by name, such as <c>partials/foot.html</c>.</param>
/// <param name="Fonts">Fonts by file name, asked in this order where the built-in one lacks a letter.</param>
public sealed record CompanyFolder(
    IReadOnlyDictionary<string, string> Templates, IReadOnlyList<(string Name, ReadOnlyMemory<byte> Bytes)> Fonts)
{
    /// <summary>Nothing of its own.</summary>
    public static readonly CompanyFolder None = new(new Dictionary<string, string>(StringComparer.Ordinal), []);
}
