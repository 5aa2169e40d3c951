using Advance.Domain.Findings;
using Advance.Reading.Files;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;
using Mark = Advance.Domain.Facts.Mark;

namespace Advance.Reading.Yaml;

/// <summary>Builds our tree from the parser's events.</summary>
/// <param name="source">The file as it is, for the marks.</param>
/// <param name="mended">The same text, unit for unit, with what the parser would stumble over made harmless.</param>
/// <param name="spoilt">Where it was mended: what stands there is not looked at again.</param>
/// <param name="findings">Takes what is wrong.</param>
internal sealed class TreeBuilder(TextSource source, string mended, IReadOnlyList<Span> spoilt, ICollection<Finding> findings)
{
    /// <summary>How many lists and maps may stand in each other. Deep enough for any gig, and far from the end of the stack.</summary>
    public const int MostDepth = 60;

    /// <summary>How many values a file may hold once its aliases are followed.</summary>
    public const int MostNodes = 400_000;

    private readonly Parser parser = new(new Scanner(new StringReader(mended), skipComments: true));
    private readonly Dictionary<string, Node?> anchors = new(StringComparer.Ordinal);
    private int nodes;
    private int passed;

    /// <summary>The tree of the file's only document; null where there is none.</summary>
    /// <exception cref="SyntaxFault">The file cannot be read on.</exception>
    public Node? Build()
    {
        Next();
        Node? root = null;
        while (Current is not StreamEnd)
        {
            if (Current is DocumentStart start && root is not null)
            {
                throw new SyntaxFault(SyntaxFindings.SecondDocument(MarkOf(start)));
            }

            if (Current is NodeEvent)
            {
                root = ReadNode(depth: 0);
            }
            else
            {
                Next();
            }
        }

        return root is ScalarNode { IsBlank: true } ? null : root;
    }

    private ParsingEvent Current => parser.Current!;

    private Node ReadNode(int depth)
    {
        var here = Current;
        if (++nodes > MostNodes)
        {
            throw new SyntaxFault(SyntaxFindings.TooMany(MarkOf(here), MostNodes));
        }

        if (depth > MostDepth)
        {
            throw new SyntaxFault(SyntaxFindings.TooDeep(MarkOf(here), MostDepth));
        }

        if (here is AnchorAlias alias)
        {
            Next();
            return Follow(alias);
        }

        if (here is not NodeEvent start)
        {
            throw new SyntaxFault(SyntaxFindings.Syntax(MarkOf(here), ""));
        }

        if (!start.Tag.IsEmpty)
        {
            findings.Add(SyntaxFindings.Tag(MarkOf(start)));
        }

        var name = start.Anchor.IsEmpty ? null : start.Anchor.Value;
        if (name is not null)
        {
            anchors[name] = null;
        }

        var node = ReadContent(start, depth);
        if (name is not null)
        {
            anchors[name] = node;
        }

        return node;
    }

    private Node ReadContent(NodeEvent start, int depth)
    {
        Next();
        return start switch
        {
            Scalar scalar => ReadScalar(scalar),
            SequenceStart => ReadList(start, depth),
            _ => ReadMap(start, depth),
        };
    }

    private ListNode ReadList(NodeEvent start, int depth)
    {
        var items = new List<Node>();
        while (Current is not SequenceEnd)
        {
            items.Add(ReadNode(depth + 1));
        }

        Next();
        return new ListNode(items, MarkOf(start), 1 + items.Sum(item => item.Weight));
    }

    private MapNode ReadMap(NodeEvent start, int depth)
    {
        var gathering = new MapGathering(findings);
        Mark? first = null;
        while (Current is not MappingEnd)
        {
            var key = ReadNode(depth + 1);
            first ??= key.At;

            // The parser forgets the value of a blank key.
            gathering.Add(key, Current is MappingEnd ? new SpoiltNode(key.At) : ReadNode(depth + 1));
        }

        Next();
        var entries = gathering.Finish();
        var braced = ((MappingStart)start).Style == MappingStyle.Flow && source.Text.AsSpan(Place(start.Start)).StartsWith('{');
        return new MapNode(entries, gathering.IsPartial, braced ? MarkOf(start) : first ?? MarkOf(start), gathering.Weight);
    }

    private Node ReadScalar(Scalar scalar)
    {
        var (from, to) = (Place(scalar.Start), Place(scalar.End));
        if (IsSpoilt(from, to))
        {
            return new SpoiltNode(source.MarkAt(from, to - from));
        }

        if (scalar.Style is ScalarStyle.Literal or ScalarStyle.Folded)
        {
            return ReadBlock(scalar);
        }

        // After an anchor or a tag the event starts there, and the text does not.
        from = PastProperties(from, to, scalar);
        var quote = scalar.Style == ScalarStyle.Plain ? 0 : 1;
        var inStep = scalar.Value.Length + (2 * quote) == to - from && !scalar.Value.Contains('\n') && !source.Text.AsSpan(from, to - from).Contains('\n');
        var lead = quote == 0 ? 0 : scalar.Value.Length - scalar.Value.AsSpan().TrimStart(' ').Length;
        return new ScalarNode(scalar.Value.Trim(' '), source.MarkAt(from, to - from), inStep ? quote + lead : ScalarNode.Unmapped);
    }

    // Scalars come in the order of the text, so that what has been passed need not be looked at again.
    private bool IsSpoilt(int from, int to)
    {
        while (passed < spoilt.Count && spoilt[passed].End <= from)
        {
            passed++;
        }

        return passed < spoilt.Count && spoilt[passed].Touches(from, to);
    }

    private int PastProperties(int from, int to, Scalar scalar) =>
        scalar.Anchor.IsEmpty && scalar.Tag.IsEmpty ? from
        : scalar.Style == ScalarStyle.Plain ? Math.Max(from, to - scalar.Value.Length)
        : Math.Max(from, source.Text.AsSpan(from, to - from).IndexOfAny('"', '\'') + from);

    private BlockNode ReadBlock(Scalar scalar)
    {
        var header = Place(scalar.Start) + source.Text.AsSpan(Place(scalar.Start)).IndexOfAny('|', '>');
        var at = source.MarkAt(header, 1);
        var last = scalar.End.Column > 1 && scalar.End.Index >= source.Text.Length ? (int)scalar.End.Line : (int)scalar.End.Line - 1;
        while (last > at.Line && source.Line(last).IsWhiteSpace())
        {
            last--;
        }

        return new BlockNode(scalar.Value.TrimEnd('\n', ' '), at, scalar.Style == ScalarStyle.Folded, at.Line + 1, last);
    }

    private Node Follow(AnchorAlias alias)
    {
        var at = MarkOf(alias);
        if (!anchors.TryGetValue(alias.Value.Value, out var node))
        {
            findings.Add(SyntaxFindings.NoSuchAnchor(at, alias.Value.Value));
            return new SpoiltNode(at);
        }

        if (node is null)
        {
            findings.Add(SyntaxFindings.AliasInItself(at, alias.Value.Value));
            return new SpoiltNode(at);
        }

        nodes += node.Weight;
        return nodes > MostNodes ? throw new SyntaxFault(SyntaxFindings.AliasBomb(at, MostNodes)) : node;
    }

    private void Next()
    {
        try
        {
            parser.MoveNext();
        }
        catch (YamlException refusal)
        {
            throw new SyntaxFault(SyntaxFindings.Syntax(source.MarkAt(Place(refusal.Start), 1), refusal.Message));
        }
        catch (Exception refusal) when (refusal is InvalidOperationException or ArgumentException or IndexOutOfRangeException)
        {
            // The scanner gives up on an unclosed bracket without saying where; the scan of the raw lines has found those it knows.
            var last = parser.Current is { } before ? Place(before.End) : 0;
            throw new SyntaxFault(SyntaxFindings.Syntax(source.MarkAt(last, 1), ""));
        }
    }

    private Mark MarkOf(ParsingEvent what) =>
        source.MarkAt(Place(what.Start), Math.Max(1, Place(what.End) - Place(what.Start)));

    // The parser may count a last line end that is not there.
    private int Place(YamlDotNet.Core.Mark mark) => (int)Math.Min(mark.Index, source.Text.Length);
}
