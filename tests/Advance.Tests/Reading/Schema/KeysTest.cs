using Advance.Reading;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;
using Advance.Reading.Tables;

namespace Advance.Tests.Reading.Schema;

/// <summary>What holds for all keys of all files.</summary>
public sealed class KeysTest
{
    /// <summary>What some readers of YAML take for true or false.</summary>
    private static readonly string[] NotKeys = ["on", "off", "yes", "no", "y", "n", "in", "true", "false", "null"];

    private static readonly IReadOnlyList<Shape> Shapes = [.. FileShapes.Names.SelectMany(name => In(FileShapes.Of(name), [])).Distinct()];

    private static readonly IReadOnlyList<IRecord> Records = [.. Shapes.OfType<IRecord>()];

    [Fact]
    public void Keys_are_trade_words_in_small_letters_with_hyphens()
    {
        var keys = Records.SelectMany(record => record.Fields).Select(field => field.Key).Concat(Shapes.OfType<ITable>().Select(table => table.NameKey).OfType<string>()).Distinct();

        Assert.All(keys, key => Assert.Matches("^[a-z]+(-[a-z]+)*$", key));
        Assert.Empty(keys.Intersect(NotKeys));
    }

    [Fact]
    public void Every_key_says_what_it_is_for()
    {
        var fields = Records.SelectMany(record => record.Fields);

        Assert.All(fields, field => Assert.Matches(@"^\p{Lu}.*\.$", field.Words));
        Assert.All(fields, field => Assert.Equal(field.IsNeeded, field.Otherwise.Length == 0));
    }

    [Fact]
    public void No_record_has_a_key_twice() =>
        Assert.All(Records, record => Assert.Distinct(record.Fields.Select(field => field.Key)));

    [Fact]
    public void A_name_in_a_schema_means_one_thing()
    {
        var records = Records.GroupBy(record => record.Name);
        var phrases = Shapes.OfType<IPhrased>().Select(shape => shape.Phrase).OfType<Phrase>().Distinct().GroupBy(phrase => phrase.Name).ToList();

        Assert.All(records, sameName => Assert.Single(sameName));
        Assert.All(phrases, sameName => Assert.Single(sameName.Select(phrase => phrase.Pattern).Distinct()));
        Assert.Empty(records.Select(record => record.Key).Intersect(phrases.Select(phrase => phrase.Key)));
    }

    [Theory]
    [InlineData("gig")]
    [InlineData("venue")]
    [InlineData("company")]
    [InlineData("stock")]
    public void The_reference_tells_every_key_of_a_file(string file)
    {
        var reference = KeyReference.Write(file);

        var records = In(FileShapes.Of(file), []).OfType<IRecord>().Distinct().ToList();
        Assert.All(records, record => Assert.Contains($"\n## {record.Name}\n", reference, StringComparison.Ordinal));
        Assert.All(records.SelectMany(record => record.Fields), field => Assert.Contains($"\n| `{field.Key}` | {field.Words} |", reference, StringComparison.Ordinal));
        Assert.Equal(reference, KeyReference.Write(file));
        Assert.All(reference.Split('\n').Where(line => line.StartsWith('|')), line => Assert.True(line.Replace("\\|", "", StringComparison.Ordinal).Count(sign => sign == '|') is 4 or 5, line));
    }

    private static List<Shape> In(Shape shape, HashSet<Shape> seen) =>
        seen.Add(shape) ? shape.Parts.SelectMany(part => In(part, seen)).Prepend(shape).ToList() : [];
}
