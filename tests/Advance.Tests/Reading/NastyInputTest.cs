using System.Text;
using Advance.Domain.Findings;
using Advance.Reading;
using CsCheck;

namespace Advance.Tests.Reading;

/// <summary>Files that nobody would write on purpose, or only on purpose: each is refused in words, and nothing is thrown.</summary>
public sealed class NastyInputTest
{
    private const string Start = "gig: x\nday: Sat 12 Sep 2026\n";

    private static readonly IReadOnlyDictionary<string, (string Rule, Func<byte[]> Make)> Inputs = new Dictionary<string, (string Rule, Func<byte[]> Make)>(StringComparer.Ordinal)
    {
        ["bare number"] = ("reading/which-unit", () => Text(Start + "stage: {size: 8 x 5}\n")),
        ["unclosed bracket"] = ("reading/unclosed", () => Text(Start + "acts: [x\n")),
        ["brackets without end"] = ("reading/too-deep", () => Text(Start + "acts: " + new string('[', 200_000))),
        ["braces without end"] = ("reading/too-deep", () => Text(Start + "acts: " + new string('{', 200_000))),
        ["keys in keys without end"] = ("reading/too-deep", () => Text(Start + "acts:\n" + string.Concat(Enumerable.Range(1, 500).Select(depth => new string(' ', depth) + "a:\n")))),
        ["alias bomb"] = ("reading/too-many-repeats", () => Text(Start + Bomb())),
        ["alias in itself"] = ("reading/repeat-in-itself", () => Text(Start + "acts: &a {b: *a}\n")),
        ["cycle"] = ("reading/cycle", () => Text(Start + "venue: gig.yaml\n")),
        ["escape"] = ("reading/outside", () => Text(Start + "venue: ../../etc/passwd\n")),
        ["20 MB"] = ("reading/too-large", () => Text(Start + "client: " + new string('x', 20_000_000))),
        ["binary"] = ("reading/not-text", () => [0x7F, (byte)'E', (byte)'L', (byte)'F', 2, 1, 1, 0, 0, 0, 0xFF, 0xFE]),
        ["empty"] = ("reading/empty", () => []),
        ["only comments"] = ("reading/empty", () => Text("# nothing yet\n\n")),
        ["NUL"] = ("reading/not-text", () => Text(Start + "client: a\0b\n")),
        ["one bad byte"] = ("reading/encoding", () => [.. Text(Start + "client: "), 0xE9, (byte)'\n']),
        ["UTF-16"] = ("reading/encoding", () => Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes(Start)).ToArray()),
        ["unseen character"] = ("reading/unseen-character", () => Text(Start + "client: a\u200Bb\n")),
        ["half a million items"] = ("reading/too-large", () => Text(Start + "acts: [" + string.Concat(Enumerable.Repeat("x,", 500_000)) + "]\n")),
    };

    public static TheoryData<string> Names => new(Inputs.Keys);

    [Theory]
    [MemberData(nameof(Names))]
    public void Is_refused_in_words(string name)
    {
        var (rule, make) = Inputs[name];

        var reading = BriefReader.Read(new MemoryDoor([("gig.yaml", make())]), "gig.yaml");

        Assert.Null(reading.Brief);
        Assert.Contains(rule, reading.Findings.Where(finding => finding.Severity == Severity.Error).Select(finding => finding.Rule));
        Assert.All(reading.Findings, finding => Assert.True(finding.At.IsSomewhere));
    }

    /// <summary>Four megabytes of one thing: the time grows with the length, and not with its square.</summary>
    [Theory]
    [InlineData("k{0}: x\n")]
    [InlineData("k{0}: @x\n")]
    [InlineData("k{0}: [x, {{a: b}}]\n")]
    [InlineData("k{0}: x #y\n")]
    [InlineData("k{0}: 'x' y\n")]
    [InlineData("x{0}\n")]
    [InlineData("- x{0}\n")]
    [InlineData("k{0}: \"x\n")]
    [InlineData("{{x: ")]
    [InlineData("x{0} ")]
    [InlineData("[x], ")]
    [InlineData(" #x")]
    [InlineData("k{0}: &a{0} [*a{0}]\n")]
    [InlineData("'")]
    [InlineData("\n")]
    public void Takes_no_longer_than_its_length_asks_for(string piece)
    {
        var text = new StringBuilder(Start);
        for (var number = 0; text.Length < 3_900_000; number++)
        {
            text.AppendFormat(System.Globalization.CultureInfo.InvariantCulture, piece, number);
        }

        var watch = System.Diagnostics.Stopwatch.StartNew();
        var reading = BriefReader.Read(MemoryDoor.Of(("gig.yaml", text.ToString())), "gig.yaml");

        Assert.True(reading.Findings.Count > 0 || reading.Brief is not null);
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(30), watch.Elapsed.ToString());
    }

    [Fact]
    public void A_byte_order_mark_does_no_harm() =>
        Assert.NotNull(BriefReader.Read(new MemoryDoor([("gig.yaml", [0xEF, 0xBB, 0xBF, .. Text(Start)])]), "gig.yaml").Brief);

    [Fact]
    public void Line_ends_of_any_system_do_no_harm()
    {
        var gig = File.ReadAllText(Repository.Path("sample-gigs", "harvest-supper", "gig.yaml"));
        string[] ends = ["\n", "\r\n", "\r"];

        var titles = ends.Select(end => BriefReader.Read(MemoryDoor.Of(("gig.yaml", Alone(gig).ReplaceLineEndings(end))), "gig.yaml"));

        Assert.All(titles, reading => Assert.Equal(15, reading.Brief!.Gig.Acts[0].Inputs.Count));
    }

    [Fact]
    public void A_gig_with_slips_of_the_finger_is_read_or_refused_in_words()
    {
        var gig = Alone(File.ReadAllText(Repository.Path("sample-gigs", "harvest-supper", "gig.yaml")));
        const string Letters = "abc012 \n\t:#|-[]{}'\",&*!%@`TBC";
        var slip = Gen.Select(Gen.Int[0, 2], Gen.Int[0, gig.Length - 1], Gen.Int[0, Letters.Length - 1]);

        slip.Array[1, 3].Sample(
            slips =>
            {
                var text = slips.Aggregate(gig, (now, one) => Slip(now, one, Letters));
                var reading = BriefReader.Read(MemoryDoor.Of(("gig.yaml", text)), "gig.yaml");
                return reading.Brief is not null == reading.Findings.All(finding => finding.Severity < Severity.Error)
                    && reading.Findings.All(finding => reading.Sources.Quote(finding.At) is not null);
            },
            iter: 400);
    }

    private static string Slip(string text, (int How, int At, int Letter) slip, string letters)
    {
        var at = Math.Min(slip.At, text.Length - 1);
        return slip.How switch
        {
            0 => text.Remove(at, 1),
            1 => text.Insert(at, letters[slip.Letter].ToString()),
            _ => text.Remove(at, 1).Insert(at, letters[slip.Letter].ToString()),
        };
    }

    // Without the lines that name other files.
    private static string Alone(string gig) =>
        string.Join('\n', gig.Split('\n').Where(line => !line.StartsWith("company:", StringComparison.Ordinal) && !line.StartsWith("venue:", StringComparison.Ordinal) && !line.StartsWith("stock:", StringComparison.Ordinal)));

    private static byte[] Text(string text) => Encoding.UTF8.GetBytes(text);

    private static string Bomb()
    {
        var bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
        for (var level = 1; level < 12; level++)
        {
            bomb.Append($"a{level}: &a{level} [{string.Join(", ", Enumerable.Repeat($"*a{level - 1}", 10))}]\n");
        }

        return bomb.ToString();
    }
}
