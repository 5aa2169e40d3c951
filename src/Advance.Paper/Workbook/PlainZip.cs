using System.IO.Compression;
using System.Text;

namespace Advance.Paper.Workbook;

/// <summary>
/// Packs a workbook anew so that the same document gives the same bytes: parts in order, one time for all, and a plain name for the part
/// that the packaging library names by chance.
/// </summary>
internal static class PlainZip
{
    private const string ContentTypes = "[Content_Types].xml";
    private const string Relations = "_rels/.rels";
    private const string CoreProperties = "docProps/core.xml";
    private const string ByChance = "package/services/metadata/core-properties/";

    /// <summary>Packs a workbook anew.</summary>
    /// <param name="workbook">As the library wrote it.</param>
    /// <param name="day">The time of all parts.</param>
    /// <param name="sums">Sums whose results are put beside their formulas: the library cannot work them out.</param>
    public static byte[] Normalise(byte[] workbook, DateTime day, IReadOnlyList<WrittenSum> sums)
    {
        using var source = new ZipArchive(new MemoryStream(workbook), ZipArchiveMode.Read);
        var oldName = source.Entries.FirstOrDefault(e => e.FullName.StartsWith(ByChance, StringComparison.Ordinal))?.FullName ?? CoreProperties;
        using var target = new MemoryStream();
        using (var zip = new ZipArchive(target, ZipArchiveMode.Create, leaveOpen: true))
        {
            // The list of content types comes first, as readers that stream want it.
            foreach (var entry in source.Entries.OrderBy(e => e.FullName != ContentTypes).ThenBy(e => e.FullName, StringComparer.Ordinal))
            {
                var written = zip.CreateEntry(entry.FullName == oldName ? CoreProperties : entry.FullName, CompressionLevel.Fastest);
                written.LastWriteTime = new DateTimeOffset(DateTime.SpecifyKind(day, DateTimeKind.Unspecified), TimeSpan.Zero);
                using var to = written.Open();
                Copy(entry, to, oldName, sums);
            }
        }

        return target.ToArray();
    }

    private static void Copy(ZipArchiveEntry entry, Stream to, string oldName, IReadOnlyList<WrittenSum> sums)
    {
        using var from = entry.Open();
        using var reader = new StreamReader(from, Encoding.UTF8);
        var text = entry.FullName switch
        {
            ContentTypes => WithCoreProperties(reader.ReadToEnd()),
            Relations => Numbered(reader.ReadToEnd().Replace(oldName, CoreProperties, StringComparison.Ordinal)),
            _ when SheetXml.NumberOf(entry.FullName) is { } tab => SheetXml.Tidy(reader.ReadToEnd(), sums.Where(s => s.Tab == tab)),
            _ => null,
        };
        if (text is null)
        {
            from.CopyTo(to);
        }
        else
        {
            to.Write(Encoding.UTF8.GetBytes(text));
        }
    }

    /// <summary>The kind of the renamed part was told by the ending of its old name.</summary>
    private static string WithCoreProperties(string types) =>
        types.Replace("<Default Extension=\"psmdcp\"", $"<Override PartName=\"/{CoreProperties}\"", StringComparison.Ordinal);

    /// <summary>Relations of the package by number: their ids were drawn by chance, and nothing asks for them by id.</summary>
    private static string Numbered(string relations)
    {
        const string id = " Id=\"";
        var parts = relations.Split(id);
        for (var i = 1; i < parts.Length; i++)
        {
            parts[i] = $"{id}rId{i}{parts[i].AsSpan(parts[i].IndexOf('"', StringComparison.Ordinal))}";
        }

        return string.Concat(parts);
    }
}
