using Advance.Domain.Facts;
using Advance.Domain.Findings;
using Advance.Domain.Naming;
using Advance.Domain.Wording;
using Advance.Reading.Phrases;
using Advance.Reading.Yaml;

namespace Advance.Reading.Shapes;

/// <summary>What can be wrong between keys and values, in words.</summary>
internal static class ShapeFindings
{
    public static Finding WrongKind(Node node, Shape shape)
    {
        Words says = $"Here belongs {shape.Words}, and this is {node.Kind}";
        var cure = node switch
        {
            MapNode => "If the text holds a colon and a space, put it in quotes.",
            ScalarNode { Text: var text } when text.Contains('|') => "Write | after the key and start the table on the next line.",
            ScalarNode { Text: var text } when text.Contains(',') && shape.Fits(new ListNode([], node.At, 1)) => $"Write a list in brackets: [{text}].",
            _ => $"Write {shape.Words}.",
        };
        return Fault("wrong-kind", node.At, says, cure);
    }

    public static Finding UnknownKey(ScalarNode key, string where, IReadOnlyList<string> known)
    {
        var nearest = Nearest.To(key.Text, known);
        Words says = nearest is null ? $"{key.Text} is not a key of {where}" : $"{key.Text} is not a key of {where}: did you mean {nearest}?";
        return Fault("unknown-key", key.At, says, $"Keys here are {string.Join(", ", known)}.");
    }

    public static Finding Missing(Mark at, string key, string where, string example) =>
        Fault("missing-key", at, $"{key} is missing in {where}", $"Write {key}: {example}");

    public static Finding Blank(Mark at, string key, string example) =>
        Fault("blank", at, $"{key} is blank, and must be known", $"Write {key}: {example}");

    public static Finding NeededNow(Mark at, string key, string example) =>
        Fault("needed-now", at, $"{key} cannot stay open: the rest hangs on it", $"Write {key}: {example} and put TBC after it if it may still change.");

    public static Finding BlankItem(Mark at) => Fault("blank", at, "This item is blank", "Write it, or take the dash or comma out.");

    public static Finding TooFew(Mark at, string name, int least) =>
        Fault("too-few", at, $"{name} needs at least {least}", "Write them, or leave the key out.");

    public static Finding TwoWays(Mark at, string one, string other) =>
        Fault("two-ways", at, $"Both {one} and {other} are written, and either is enough", $"Keep {one} for a single one, or {other} for several.");

    public static Finding MissingEither(Mark at, string one, string other, string where) =>
        Fault("missing-key", at, $"{one} is missing in {where}", $"Write {one}, or {other} for several.");

    public static Finding NotTogether(Mark at, string written, string missing, string where, IReadOnlyList<string> together) =>
        Fault("missing-key", at, $"{missing} is missing in {where}, which has {written}", $"Write all of {string.Join(", ", together)}, or none.");

    public static Finding Phrase(ScalarNode node, PhraseFault fault) => Fault(fault.Rule, node.Part(fault.Offset, fault.Length), fault.Says, fault.Cure);

    public static Finding NameTwice(Mark at, string name, Mark first) =>
        Fault("duplicate-key", at, $"{name} stands twice; the first is at line {first.Line}", "Keep one of them, or give this one a name of its own.");

    private static Finding Fault(string rule, Mark at, Words says, Words cure) => new($"reading/{rule}", Severity.Error, at, says, cure);
}
