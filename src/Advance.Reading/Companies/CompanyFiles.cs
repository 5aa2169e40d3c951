using System.Text;
using Advance.Domain.Findings;
using Advance.Reading.Files;

namespace Advance.Reading.Companies;

/// <summary>What a company keeps in its own folder: text of templates by name (<c>sheets/…</c>, <c>partials/…</c>), and fonts by file name.</summary>
/// <param name="Templates">By name.</param>
/// <param name="Fonts">In the order of their names.</param>
public sealed record CompanyFiles(IReadOnlyDictionary<string, string> Templates, IReadOnlyList<(string Name, ReadOnlyMemory<byte> Bytes)> Fonts)
{
    /// <summary>Nothing of its own.</summary>
    public static readonly CompanyFiles None = new(new Dictionary<string, string>(StringComparer.Ordinal), []);

    private const int MostTemplate = 500_000;
    private const int MostFont = 20_000_000;
    private const int MostFiles = 200;
    private static readonly string[] TemplateFolders = ["partials", "sheets"];

    /// <summary>Reads the folder; a file that cannot be read is a finding, and the rest is read on.</summary>
    internal static CompanyFiles Read(IFileDoor files, string folder, ICollection<Finding> findings)
    {
        var templates = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var part in TemplateFolders)
        {
            foreach (var (name, bytes) in In(files, $"{folder}/{part}", ".html", MostTemplate, findings))
            {
                templates[$"{part}/{name}"] = Encoding.UTF8.GetString(bytes.Span).TrimStart('\uFEFF');
            }
        }

        return new CompanyFiles(templates, [.. In(files, $"{folder}/fonts", ".ttf", MostFont, findings), .. In(files, $"{folder}/fonts", ".otf", MostFont, findings)]);
    }

    private static IEnumerable<(string Name, ReadOnlyMemory<byte> Bytes)> In(IFileDoor files, string folder, string ending, int most, ICollection<Finding> findings)
    {
        var names = (files.List(folder) ?? []).Where(name => name.EndsWith(ending, StringComparison.OrdinalIgnoreCase)).Order(StringComparer.Ordinal).Take(MostFiles);
        foreach (var name in names)
        {
            var path = $"{folder}/{name}";
            var read = files.Read(path, most);
            if (read.Fault != FileFault.None)
            {
                findings.Add(FileFindings.NotRead(FileFindings.Top(path), path, read.Fault, most));
                continue;
            }

            yield return (name, read.Bytes);
        }
    }
}
