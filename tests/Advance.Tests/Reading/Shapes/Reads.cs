using Advance.Domain.Findings;
using Advance.Reading.Shapes;
using Advance.Reading.Yaml;

namespace Advance.Tests.Reading.Shapes;

/// <summary>What a shape makes of a text.</summary>
internal sealed record Reads<T>(T? Value, IReadOnlyList<Finding> Findings, Reader Reader)
    where T : class
{
    public IEnumerable<string> Rules => Findings.Select(finding => finding.Rule);

    public static Reads<T> Of(Shape<T> shape, string text, params (string Path, string Text)[] others)
    {
        var reader = new Reader(MemoryDoor.Of([("gig.yaml", text), .. others]));
        var node = new YamlFiles(reader).Open("gig.yaml", default, "gig.yaml");
        var value = node is not null && shape.TryRead(node, reader, out var read) ? read : null;
        return new(value, [.. reader.Findings], reader);
    }
}
