using System.Text.Json;
using System.Text.Json.Nodes;
using Advance.Domain.Findings;
using Advance.Reading;
using Advance.Reading.Shapes;
using Advance.Reading.Yaml;
using CsCheck;
using Json.Schema;

namespace Advance.Tests.Reading.Schema;

public sealed class SchemaPropertyTest
{
    public static TheoryData<string> Files => new(FileShapes.Names);

    private static readonly Gen<uint[]> Draws = Gen.UInt.Array[400];

    [Theory]
    [MemberData(nameof(Files))]
    public void Samples_are_read_and_validate(string file)
    {
        var schema = JsonSchema.FromText(FileSchema.Write(file));

        Draws.Sample(
            draws =>
            {
                var (sample, text) = Draw(file, draws);
                var findings = Read(file, text);
                return findings.Count == 0 && IsValid(schema, sample);
            },
            iter: 400,
            print: draws => Print(file, schema, Draw(file, draws)));
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Schema_and_reader_refuse_the_same(string file)
    {
        var schema = JsonSchema.FromText(FileSchema.Write(file));

        Draws.Sample(
            draws =>
            {
                var (sample, text) = Mutated(file, draws);
                var faults = Read(file, text).Where(finding => finding.Severity == Severity.Error).ToList();
                return IsValid(schema, sample) == (faults.Count == 0);
            },
            iter: 1500,
            print: draws => Print(file, schema, Mutated(file, draws)));
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void A_schema_is_the_same_text_each_time_and_names_each_thing_once(string file)
    {
        var text = FileSchema.Write(file);

        Assert.Equal(text, FileSchema.Write(file));
        Assert.Equal("https://json-schema.org/draft/2020-12/schema", JsonNode.Parse(text)!["$schema"]!.GetValue<string>());
    }

    private static (JsonNode Sample, string Text) Draw(string file, uint[] draws)
    {
        var next = Next(draws);
        var sample = FileShapes.Of(file).Sample(new Choices(next));
        return (sample, new SampleYaml(next).Write(sample));
    }

    private static (JsonNode Sample, string Text) Mutated(string file, uint[] draws)
    {
        var next = Next(draws);
        var sample = Mutation.Of(FileShapes.Of(file).Sample(new Choices(next)), next);
        return (sample, new SampleYaml(next).Write(sample));
    }

    private static Func<int, int> Next(uint[] draws)
    {
        var at = 0;
        return below => (int)(draws[at++ % draws.Length] % (uint)below);
    }

    private static IReadOnlyList<Finding> Read(string file, string text)
    {
        var reader = new Reader(MemoryDoor.Of(("file.yaml", text)));
        var node = new YamlFiles(reader).Open("file.yaml", default, "file.yaml");
        if (node is not null)
        {
            FileShapes.Of(file).Check(node, reader);
        }

        return [.. reader.Findings];
    }

    private static bool IsValid(JsonSchema schema, JsonNode sample) => schema.Evaluate(JsonSerializer.SerializeToElement(sample)).IsValid;

    private static string Print(string file, JsonSchema schema, (JsonNode Sample, string Text) drawn) =>
        $"{drawn.Sample.ToJsonString()}\n{drawn.Text}\nvalid {IsValid(schema, drawn.Sample)}\n{string.Join('\n', Read(file, drawn.Text).Select(finding => $"{finding.At} {finding.Rule} {finding.Says}"))}";
}
