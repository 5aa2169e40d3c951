using Advance.Domain.Facts;
using Advance.Domain.Findings;
using Advance.Domain.Wording;

namespace Advance.Reading.Yaml;

/// <summary>What can be wrong with the structure of a file, in words.</summary>
internal static class SyntaxFindings
{
    // What the parser says, and what it means to whoever typed the line.
    private static readonly (string Says, string Means, string Cure)[] Meanings =
    [
        ("expected key", "This line does not fit the lines before it", "Line it up with the keys that it belongs to, each as key: value."),
        ("expected '-'", "This line is not an item of the list that it stands in", "Start it with a dash, or line it up with the key that it belongs to."),
        ("invalid mapping", "A colon stands here where a value already goes on", "Put the value in quotes, or line the key up with its neighbours."),
        ("sequence entries are not allowed", "A list item starts here where none can", "Put each dash on a line of its own, below the key."),
        ("expected ',' or '}'", "A comma or a closing } is missing before this", "Close the brace, with commas between its keys."),
        ("expected ',' or ']'", "A comma or a closing ] is missing before this", "Close the bracket, with commas between its items."),
        ("quoted scalar", "This quote is not closed", "Close it with the same kind of quote."),
        ("block scalar", "Text follows on the line of | or >", "Start the block on the next line."),
        ("cannot start any token", "A value cannot start with this sign", "Put the value in quotes."),
        ("more than one anchor", "A value starts with two anchors", "Leave one of them."),
    ];

    public static Finding Syntax(Mark at, string parserSays)
    {
        foreach (var (says, means, cure) in Meanings)
        {
            if (parserSays.Contains(says, StringComparison.Ordinal))
            {
                return Stopped(at, means, cure);
            }
        }

        return Stopped(at, "The file cannot be understood from about here on", "Look for a bracket, a brace or a quote that is not closed, here or above.");
    }

    public static Finding SecondDocument(Mark at) =>
        Fault("reading/second-document", at, "A second document starts here, and a file holds one", "Take the --- out, or make two files.");

    public static Finding TooMany(Mark at, int most) =>
        Stopped(at, $"This file holds more than {most} values", "Check that this is the file that was meant.", "reading/too-large");

    public static Finding TooDeep(Mark at, int most) =>
        Stopped(at, $"More than {most} lists and maps stand in each other here", "Close the brackets that were opened.", "reading/too-deep");

    public static Finding AliasBomb(Mark at, int most) =>
        Stopped(at, $"This repeat brings the file to more than {most} values", "Repeat fewer things; a repeat of repeats grows fast.", "reading/too-many-repeats");

    public static Finding AliasInItself(Mark at, string name) =>
        Fault("reading/repeat-in-itself", at, $"*{name} stands inside the very thing that it repeats", "Repeat something that is complete above this line.");

    public static Finding NoSuchAnchor(Mark at, string name) =>
        Fault("reading/no-such-anchor", at, $"*{name} repeats what is marked &{name} above, and nothing is", $"Mark the thing with &{name}; if the value is a text that starts with a star, put it in quotes.");

    public static Finding Tag(Mark at) =>
        Fault("reading/tag", at, "A value that starts with ! is a tag, and tags are not read", "Take the tag out; if ! belongs to the text, put the text in quotes.");

    public static Finding KeyIsNotText(Mark at, string kind) =>
        Fault("reading/key-not-text", at, $"A key is a text, and this is {kind}", "Write the key as a plain word.");

    public static Finding KeyIsBlank(Mark at) =>
        Fault("reading/key-blank", at, "There is no key before this colon", "Write the key, or take the line out.");

    public static Finding KeyTwice(Mark at, string key, Mark first) =>
        Fault("reading/duplicate-key", at, $"{key} stands twice in the same map; the first is at line {first.Line}", "Keep one of them, or give this one a name of its own.");

    public static Finding MergeNeedsMap(Mark at, string kind) =>
        Fault("reading/merge", at, $"<< takes the keys of another map, and what follows is {kind}", "Write <<: *name, where &name marks a map above.");

    private static Finding Stopped(Mark at, Words says, Words cure, string rule = "reading/syntax") =>
        Fault(rule, at, says, $"{cure} The rest of this file was not read.");

    private static Finding Fault(string rule, Mark at, Words says, Words cure) => new(rule, Severity.Error, at, says, cure);
}
