using Advance.Domain.Facts;
using Advance.Domain.Findings;
using Advance.Domain.Wording;

namespace Advance.Reading.Yaml;

/// <summary>What trips people in the raw lines, in words.</summary>
internal static class TrapFindings
{
    public static Finding Tab(Mark at, int more)
    {
        Words says = more == 0 ? "A tab indents this line" : $"A tab indents this line, and {more} more below";
        return Fault("reading/tab", at, says, "Indent by spaces only, two a level. The rest of this file was not read.");
    }

    public static Finding GluedHash(Mark at, string comment, string whole) =>
        Fault("reading/glued-hash", at, $"{comment} is a comment here, and is not part of the value", $"Did you mean \"{whole}\"? Then put it in quotes; for a comment, put a space after #.");

    public static Finding TbcInComment(Mark at, string tbc) =>
        new("reading/tbc-in-comment", Severity.Concern, at, $"{tbc} stands in a comment, where nobody else sees it", "Write it in the value: 63 A TBC venue by 4 Sep, or TBC alone.");

    public static Finding LeadingSign(Mark at, string sign) =>
        Fault("reading/leading-sign", at, $"A value that starts with {sign} is not read as a text", "Put the whole value in quotes.");

    public static Finding Tag(Mark at) => SyntaxFindings.Tag(at);

    public static Finding NoSuchAnchor(Mark at, string name) => SyntaxFindings.NoSuchAnchor(at, name);

    public static Finding EmptyAnchor(Mark at) =>
        Fault("reading/empty-anchor", at, "& marks a thing to be repeated, and no name follows it", "Put the value in quotes, or write a name right after &.");

    public static Finding UnusedAnchor(Mark at, string name) =>
        Fault("reading/unused-anchor", at, $"&{name} marks a thing to be repeated, and nothing repeats it", "If & belongs to the text, put the text in quotes; if not, take the mark out.");

    public static Finding AfterAlias(Mark at, string name) =>
        Fault("reading/leading-sign", at, $"*{name} repeats a thing marked above, and nothing may follow it", "If the star belongs to the text, put the text in quotes.");

    public static Finding SecondColon(Mark at) =>
        Fault("reading/second-colon", at, "A second colon and a space stand in this value", "Put the value in quotes; in a table no quotes are needed.");

    public static Finding SecondColonInBraces(Mark at) =>
        Fault("reading/second-colon", at, "A second colon and a space stand in this value", "Put the value in quotes, or a comma before the next key.");

    public static Finding CommaInBraces(Mark at, string rest) =>
        Fault("reading/comma-in-braces", at, $"A comma in braces ends the value: {rest} is read as a new key", "Put the value before it in quotes, comma and all, or give this key a value.");

    public static Finding Unclosed(Mark at, char open) =>
        Fault("reading/unclosed", at, $"This {open} is not closed", open is '[' or '{' ? $"Close it with {(open == '[' ? "]" : "}")}." : "Close it with the same quote; if it belongs to the text, put the text in the other kind of quotes.");

    public static Finding AfterClose(Mark at, char open) =>
        Fault("reading/after-close", at, $"Text follows after what started with {open} is closed", open is '[' or '{' ? "If the bracket belongs to the text, put the whole value in quotes." : "If the quote belongs to the text, put the whole value in the other kind of quotes.");

    public static Finding BlockText(Mark at, char sign) =>
        Fault("reading/leading-sign", at, $"{sign} starts a block of lines, and text follows on its own line", $"Start the block on the next line; if {sign} belongs to the text, put the text in quotes.");

    public static Finding DashOnKeyLine(Mark at) =>
        Fault("reading/leading-sign", at, "A list item cannot start on the line of its key", "Put it on the next line; if the dash belongs to the text, put the text in quotes.");

    public static Finding NoColon(Mark at, string line) =>
        Fault("reading/no-colon", at, $"{line} has no colon, and a key is needed here", "Write key: value, or indent the line further if it goes on from the one above.");

    public static Finding NoSpace(Mark at, string key) =>
        Fault("reading/no-colon", at, $"A space is missing after {key}:", "Write key: value with a space after the colon.");

    public static Finding IndentedUnderValue(Mark at, string key) =>
        Fault("reading/indent", at, $"This line stands under {key}, which has its value already", "Line it up with its neighbours.");

    public static Finding IndentedBetween(Mark at) =>
        Fault("reading/indent", at, "This line lines up with no line above", "Line it up with the keys that it belongs to. The rest of this file was not read.");

    private static Finding Fault(string rule, Mark at, Words says, Words cure) => new(rule, Severity.Error, at, says, cure);
}
