using System.Text.RegularExpressions;
using Advance.Reading.Phrases;
using CsCheck;

namespace Advance.Tests.Reading.Phrases;

public sealed class PhraseTest
{
    /// <summary>What a pattern cannot say: how long months are, which of two numbers is larger, what stands twice.</summary>
    private static readonly string[] BeyondPatterns = ["no-such-day", "backwards", "out-of-range", "twice", "capitals"];

    private const string Letters = "0123456789 .,-+:/'\"[]x%mkgAVftinSRLUDof–×”’½ ";

    [Theory]
    [MemberData(nameof(AllPhrases.Names), MemberType = typeof(AllPhrases))]
    public void Reads_its_own_examples_and_its_pattern_takes_them(string name)
    {
        var phrase = AllPhrases.ByName[name];

        Assert.NotEmpty(phrase.Examples);
        Assert.All(phrase.Examples, example => Assert.Null(phrase.FaultOf(example)));
        Assert.All(phrase.Examples, example => Assert.Matches(Whole(phrase), example));
    }

    [Theory]
    [MemberData(nameof(AllPhrases.Names), MemberType = typeof(AllPhrases))]
    public void Reads_exactly_what_its_pattern_takes(string name)
    {
        var phrase = AllPhrases.ByName[name];
        var pattern = Whole(phrase);
        var letters = Letters + string.Concat(phrase.Examples);
        var step = Gen.Select(Gen.Int[0, 3], Gen.Int[0, 60], Gen.Int[0, letters.Length - 1]);
        var mutant = Gen.Select(Example(phrase), step.Array[0, 4], (text, steps) => steps.Aggregate(text, (now, one) => Mutate(now, one, letters)).Trim());

        mutant.Where(text => text.Length > 0).Sample(
            text =>
            {
                var fault = phrase.FaultOf(text);
                return pattern.IsMatch(text) ? fault is null || BeyondPatterns.Contains(fault.Rule) : fault is not null;
            },
            iter: 1500,
            print: text => $"{text} -> {phrase.FaultOf(text)}; pattern {pattern.IsMatch(text)}");
    }

    [Theory]
    [MemberData(nameof(AllPhrases.Names), MemberType = typeof(AllPhrases))]
    public void Points_into_the_text_whatever_is_wrong_with_it(string name)
    {
        var phrase = AllPhrases.ByName[name];
        var text = Gen.Select(Example(phrase), Gen.String[Gen.Char[Letters], 0, 8], Gen.Int[0, 20], (example, junk, at) => example.Insert(Math.Min(at, example.Length), junk).Trim());

        text.Where(one => one.Length > 0).Sample(
            one => phrase.FaultOf(one) is not { } fault || (fault.Offset >= 0 && fault.Length > 0 && fault.Offset + fault.Length <= one.Length),
            iter: 800);
    }

    private static Gen<string> Example(Phrase phrase) => Gen.Int[0, phrase.Examples.Count - 1].Select(index => phrase.Examples[index]);

    private static string Mutate(string text, (int How, int At, int Letter) step, string letters)
    {
        var at = text.Length == 0 ? 0 : step.At % text.Length;
        return step.How switch
        {
            0 when text.Length > 1 => text.Remove(at, 1),
            1 => text.Insert(at, letters[step.Letter].ToString()),
            2 when text.Length > 0 => text.Remove(at, 1).Insert(at, letters[step.Letter].ToString()),
            _ => text + " " + text[..Math.Min(text.Length, at + 1)],
        };
    }

    // As an editor runs it: the patterns are made for ECMA-262.
    private static Regex Whole(Phrase phrase) => new($"^(?:{phrase.Pattern})$", RegexOptions.CultureInvariant, TimeSpan.FromSeconds(5));
}
