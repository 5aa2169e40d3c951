using Advance.Domain.Facts;
using Advance.Reading.Files;
using Advance.Reading.Shapes;

namespace Advance.Reading.Yaml;

/// <summary>Opens YAML files, each of them once.</summary>
internal sealed class YamlFiles(Reader reader)
{
    /// <summary>The most bytes of a YAML file; a page of a gig is 8 KB.</summary>
    public const int MostBytes = 4_000_000;

    private readonly HashSet<string> opened = new(StringComparer.Ordinal);

    /// <summary>The tree of a file that another names, by a path from there.</summary>
    /// <returns>Null where a finding has been made instead.</returns>
    public Node? OpenNamed(ScalarNode name)
    {
        if (TreePath.TryResolve(name.At.File, name.Text, out var path))
        {
            return Open(path, name.At, name.Text);
        }

        reader.Fault(FileFindings.Outside(name.At, name.Text));
        return null;
    }

    /// <summary>The tree of a file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="named">Where it was named.</param>
    /// <param name="written">How it was named there.</param>
    /// <returns>Null where a finding has been made instead.</returns>
    public Node? Open(string path, Mark named, string written)
    {
        if (!opened.Add(path))
        {
            reader.Fault(FileFindings.Cycle(named, written));
            return null;
        }

        var read = reader.Files.Read(path, MostBytes);
        if (read.Fault != FileFault.None)
        {
            reader.Fault(FileFindings.NotRead(named, written, read.Fault, MostBytes));
            return null;
        }

        if (TextDecoder.Decode(path, read.Bytes.Span, reader.Findings) is not { } source)
        {
            return null;
        }

        reader.Sources.Add(source);
        return YamlFile.Read(source, reader.Findings);
    }
}
