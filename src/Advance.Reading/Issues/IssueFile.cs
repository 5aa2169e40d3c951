using System.Text.Encodings.Web;
using System.Text.Json;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Issues;
using Advance.Reading.Files;

namespace Advance.Reading.Issues;

/// <summary>The file beside a gig that keeps its last issue. It comes and goes with the gig, so it is read as strictly as the rest.</summary>
public static class IssueFile
{
    /// <summary>Its name, in the gig's folder.</summary>
    public const string Name = "issued.json";

    private const string Revision = "revision";
    private const string Chosen = "chosen";
    private const string Figures = "figures";
    private const int MostBytes = 8_000_000;

    private static readonly JsonWriterOptions Options = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, NewLine = "\n" };

    /// <summary>Writes an issue, in the order of the addresses.</summary>
    public static byte[] Write(LastIssue issue)
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, Options))
        {
            json.WriteStartObject();
            json.WriteString(Revision, issue.Revision);
            WriteMap(json, Chosen, issue.Chosen.InOrder);
            WriteMap(json, Figures, issue.Figures.OrderBy(figure => figure.Key));
            json.WriteEndObject();
        }

        buffer.WriteByte((byte)'\n');
        return buffer.ToArray();
    }

    /// <summary>Reads the last issue of the gig at that path; null where there is none, or it cannot be read.</summary>
    internal static LastIssue? Read(IFileDoor files, string gigPath, ICollection<Finding> findings)
    {
        var path = Beside(gigPath);
        if (!files.Exists(path))
        {
            return null;
        }

        var read = files.Read(path, MostBytes);
        if (read.Fault != FileFault.None)
        {
            findings.Add(FileFindings.NotRead(FileFindings.Top(path), path, read.Fault, MostBytes));
            return null;
        }

        try
        {
            using var document = JsonDocument.Parse(read.Bytes, new JsonDocumentOptions { MaxDepth = 4 });
            return Read(document.RootElement) ?? Spoilt(findings, FileFindings.Top(path));
        }
        catch (JsonException fault)
        {
            return Spoilt(findings, new Mark(path, (int)(fault.LineNumber ?? 0) + 1, (int)(fault.BytePositionInLine ?? 0) + 1));
        }
    }

    private static string Beside(string gigPath) => gigPath[..(gigPath.LastIndexOf('/') + 1)] + Name;

    private static LastIssue? Read(JsonElement root) =>
        root.ValueKind == JsonValueKind.Object
        && root.TryGetProperty(Revision, out var revision) && revision.ValueKind == JsonValueKind.String
        && MapOf(root, Chosen) is { } chosen
        && MapOf(root, Figures) is { } figures
            ? new LastIssue(revision.GetString()!, new Choices(chosen), figures)
            : null;

    private static Dictionary<Address, string>? MapOf(JsonElement root, string name)
    {
        if (!root.TryGetProperty(name, out var map) || map.ValueKind != JsonValueKind.Object)
        {
            return null;
        }

        var read = new Dictionary<Address, string>();
        foreach (var entry in map.EnumerateObject())
        {
            if (entry.Value.ValueKind != JsonValueKind.String)
            {
                return null;
            }

            read[Address.Read(entry.Name)] = entry.Value.GetString()!;
        }

        return read;
    }

    private static LastIssue? Spoilt(ICollection<Finding> findings, Mark at)
    {
        findings.Add(FileFindings.NotAnIssue(at));
        return null;
    }

    private static void WriteMap(Utf8JsonWriter json, string name, IEnumerable<KeyValuePair<Address, string>> map)
    {
        json.WriteStartObject(name);
        foreach (var (address, text) in map)
        {
            json.WriteString(address.Text, text);
        }

        json.WriteEndObject();
    }
}
