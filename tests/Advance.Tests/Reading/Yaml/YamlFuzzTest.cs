using Advance.Domain.Findings;
using Advance.Reading.Files;
using Advance.Reading.Yaml;
using CsCheck;

namespace Advance.Tests.Reading.Yaml;

public sealed class YamlFuzzTest
{
    private static readonly string[] Pieces =
    [
        "a", "b: ", "key:", "- ", "\n", "\n  ", "\n    ", ": ", ":", "#", " # TBC", "[", "]", "{", "}", ",", "\"", "'", "&x ", "*x", "!t ", "|", ">", "|\n  ",
        "@", "%", "`", "\t", "? ", "---\n", "...", "<<: ", "12 m", "''", "\\", "é", "😀", "x | y", "&", "*", "!", "~",
    ];

    private static readonly Gen<string> Texts = Gen.Int[0, Pieces.Length - 1].Select(index => Pieces[index]).Array[0, 24].Select(string.Concat);

    [Fact]
    public void Nothing_that_can_be_typed_is_thrown_and_every_caret_has_a_line() =>
        Texts.Sample(
            text =>
            {
                var source = new TextSource("gig.yaml", text);
                var findings = new List<Finding>();
                YamlFile.Read(source, findings);
                return findings.TrueForAll(finding => source.Quote(finding.At) is { } quote && quote.Start <= quote.Line.Length);
            },
            iter: 15_000);

    [Fact]
    public void What_is_given_up_is_said_to_be() =>
        Texts.Sample(
            text =>
            {
                var findings = new List<Finding>();
                return YamlFile.Read(new TextSource("gig.yaml", text), findings) is not null || findings.Exists(finding => finding.Severity == Severity.Error);
            },
            iter: 8_000);

    [Fact]
    public void Mending_keeps_every_line_and_its_length() =>
        Texts.Sample(
            text =>
            {
                var mending = new Mending(new TextSource("gig.yaml", text), []);
                new LineScan(new TextSource("gig.yaml", text), mending).Run();
                return text.Split('\n').Select(line => line.Length).SequenceEqual(mending.Text.Split('\n').Select(line => line.Length));
            },
            iter: 8_000);
}
