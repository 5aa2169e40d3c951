using System.Text;
using Advance.Paper.Tree;
using Advance.Sheets.Markup.Elements;
using Advance.Sheets.Markup.Scanning;
using Advance.Sheets.Markup.Subset;

namespace Advance.Sheets.Markup.Building;

/// <summary>
/// Builds the pieces of one line of text. Indentation becomes a blank between two pieces, and nothing at both ends of the line and after a
/// line break.
/// </summary>
/// <param name="faults">Takes what is wrong.</param>
/// <param name="isField">True for a line that is a field of its own, which takes the verdict of what stands in it.</param>
internal sealed class Line(MarkupFaults faults, bool isField = false)
{
    private readonly List<Inline> pieces = [];

    // Not null where indentation waits to become a blank, in the style that it was written in.
    private TextStyle? blank;

    /// <summary>From left to right.</summary>
    public IReadOnlyList<Inline> Pieces => pieces;

    /// <summary>The worst verdict of all that stands in a field.</summary>
    public Verdict Verdict { get; private set; }

    /// <summary>The pieces of what stands in an element.</summary>
    public static IReadOnlyList<Inline> Of(Element element, MarkupFaults faults)
    {
        var line = new Line(faults);
        line.Add(element.Children, TextStyle.Normal);
        return line.pieces;
    }

    /// <summary>The line that stands in a field.</summary>
    public static Line OfField(Element element, MarkupFaults faults)
    {
        var line = new Line(faults, isField: true) { Verdict = VerdictOf(element) };
        line.Add(element.Children, TextStyle.Normal);
        return line;
    }

    /// <summary>The text that stands in an element, when text is all it holds.</summary>
    public static string TextOf(Element element)
    {
        var text = new StringBuilder();
        var waits = false;
        foreach (var characters in element.Children.OfType<Characters>())
        {
            waits |= characters.Leads;
            if (characters.Text.Length > 0)
            {
                text.Append(waits && text.Length > 0 ? " " : "").Append(characters.Text);
                waits = characters.Trails;
            }
        }

        return text.ToString();
    }

    private void Add(IEnumerable<Node> nodes, TextStyle style)
    {
        foreach (var node in nodes)
        {
            if (node is Characters characters)
            {
                Add(characters, style);
            }
            else if (node is Element element)
            {
                Add(element, style);
            }
        }
    }

    private void Add(Characters characters, TextStyle style)
    {
        Wait(characters.Leads, style);
        if (characters.Text.Length > 0)
        {
            Put(new Text(characters.Text, style));
        }

        Wait(characters.Trails, style);
    }

    private void Add(Element element, TextStyle style)
    {
        switch (element.Form)
        {
            case { Name: "strong" }:
                Add(element.Children, style | TextStyle.Strong);
                break;
            case { Name: "small" }:
                Add(element.Children, style | TextStyle.Quiet);
                break;
            case { Name: "span", Class: "large" }:
                Add(element.Children, style | TextStyle.Large);
                break;
            case { Name: "span", Class: "judged" }:
                Judge(element, style);
                break;
            case { Name: "a", Class: null }:
                PutLink(element, style);
                break;
            case { Name: "data" or "time" }:
                PutDatum(element, style);
                break;
            default:
                Put(Piece(element, style));
                break;
        }
    }

    private Inline Piece(Element element, TextStyle style) => element.Form switch
    {
        { Name: "br" } => new LineBreak(),
        { Name: "a" } => new PageOf(element.Text("href")?[1..] ?? "", style),
        { Name: "mark" } => new Tag(TextOf(element)),
        { Name: "input" } => new TickBox(),
        { Name: "label" } => Tick(element),
        { Name: "meter" } => new Bar(element.Number("value") ?? 0, element.Number("high")),
        { Name: "span" } => element.Number("data-mm") is { } mm ? new WriteIn(mm) : new WriteIn(),
        var form => throw new InvalidOperationException($"No piece of a line is made of {form.Title}."),
    };

    private TickBox Tick(Element element)
    {
        if (element.Elements.Count() != 1 || element.Children.Find(child => child is not Characters { Text: "" }) is not Element)
        {
            faults.Add(element.At, "A `label` holds one box to tick, and then the words.");
        }

        return new(TextOf(element));
    }

    private void PutDatum(Element element, TextStyle style)
    {
        var unit = element.Text("data-unit") ?? "";
        var amount = element.Number("value") ?? 0;
        MachineValue? value = element.Form switch
        {
            { Class: "sum" } => new SumValue(amount, unit),
            { Name: "data" } => new NumberValue(amount, unit) { Decimals = (int?)element.Number("data-decimals") },
            _ => MachineValues.Time(element.Text("datetime") ?? ""),
        };
        var characters = element.Children.OfType<Characters>().ToList();
        Wait(characters is [{ Leads: true }, ..], style);
        Put(value is null ? new Text(TextOf(element), style) : new Datum(TextOf(element), value, style));
        Wait(characters is [.., { Trails: true }], style);
    }

    private void PutLink(Element element, TextStyle style)
    {
        var inner = new Line(faults, isField);
        inner.Add(element.Children, style);
        Wait(element.Children is [Characters { Leads: true }, ..], style);
        if (inner.pieces.Exists(piece => piece is Link or PageOf))
        {
            faults.Add(element.At, "A link cannot stand in a link.");
        }

        Put(new Link(element.Text("href") ?? "", inner.pieces));
        Verdict = Worse(Verdict, inner.Verdict);
        Wait(inner.blank is not null, style);
    }

    // Where no field can show the verdict, words do: it is never lost.
    private void Judge(Element element, TextStyle style)
    {
        Add(element.Children, style);
        var verdict = VerdictOf(element);
        if (isField)
        {
            Verdict = Worse(Verdict, verdict);
        }
        else if (verdict != Verdict.Plain)
        {
            Wait(true, style);
            Put(new Tag(verdict == Verdict.Fails ? "over its limit" : "cannot be judged"));
        }
    }

    private void Wait(bool forBlank, TextStyle style) => blank = forBlank ? blank ?? style : blank;

    private void Put(Inline piece)
    {
        if (blank is { } style && pieces.Count > 0 && pieces[^1] is not LineBreak && piece is not LineBreak)
        {
            PutText(" ", style);
        }

        blank = null;
        if (piece is Text text)
        {
            PutText(text.Value, text.Style);
        }
        else
        {
            pieces.Add(piece);
        }
    }

    private void PutText(string value, TextStyle style)
    {
        if (pieces is [.., Text last] && last.Style == style)
        {
            pieces[^1] = last with { Value = last.Value + value };
        }
        else
        {
            pieces.Add(new Text(value, style));
        }
    }

    private static Verdict VerdictOf(Element element) => (Verdict)(element.Word("data-verdict") ?? 0);

    private static Verdict Worse(Verdict one, Verdict other) => one > other ? one : other;
}
