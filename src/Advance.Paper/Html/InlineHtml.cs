using System.Globalization;
using Advance.Paper.Layout;
using Advance.Paper.Setting;
using Advance.Paper.Tree;

namespace Advance.Paper.Html;

/// <summary>Writes inlines.</summary>
internal sealed class InlineHtml(Markup page, DocumentLayout laid, Wording words)
{
    /// <summary>What an unnamed tick box is called by a screen reader.</summary>
    public string Around { get; set; } = "";

    public void Write(IReadOnlyList<Inline> line)
    {
        foreach (var inline in line)
        {
            Write(inline, depth: 0);
        }
    }

    private void Write(Inline inline, int depth)
    {
        switch (inline)
        {
            case Text text:
                Styled(text.Style, text.Value);
                break;
            case Datum datum:
                WriteDatum(datum);
                break;
            case LineBreak:
                page.Raw("<br>");
                break;
            case Link link when depth < 8:
                WriteLink(link, depth);
                break;
            case PageOf of when laid.PageOf.TryGetValue(of.Target, out var number):
                page.Open("a", ("href", Markup.Fragment(of.Target)));
                Styled(of.Style, number.ToString(CultureInfo.InvariantCulture));
                page.Close("a");
                break;
            case PageOf:
                page.Text("?");
                break;
            case Tag tag:
                page.Element("span", tag.Text, ("class", "tag"));
                break;
            case TickBox tick:
                WriteTick(tick);
                break;
            case WriteIn write:
                var least = double.IsFinite(write.LeastMm) ? Math.Clamp(write.LeastMm, 1, 300) : 12;
                page.Open("span", ("class", "write"), ("style", $"min-width:{Markup.Number(least)}mm")).Close("span");
                break;
            case Bar bar:
                WriteBar(bar);
                break;
        }
    }

    private void Styled(TextStyle style, string text)
    {
        if (style.HasFlag(TextStyle.Strong))
        {
            page.Open("strong");
        }

        var small = style.HasFlag(TextStyle.Large) ? "large" : style.HasFlag(TextStyle.Quiet) ? "quiet" : null;
        if (small is not null)
        {
            page.Open("span", ("class", small));
        }

        page.Text(text);
        if (small is not null)
        {
            page.Close("span");
        }

        if (style.HasFlag(TextStyle.Strong))
        {
            page.Close("strong");
        }
    }

    private void WriteDatum(Datum datum)
    {
        var (name, attribute, value) = Machine(datum.Value);
        page.Open(name, (attribute, value), ("class", "whole"));
        Styled(datum.Style, datum.Shown);
        page.Close(name);
    }

    private static (string Name, string Attribute, string? Value) Machine(MachineValue value) => value switch
    {
        NumberValue { Amount: var amount } when double.IsFinite(amount) => ("data", "value", amount.ToString("R", CultureInfo.InvariantCulture)),
        SumValue { Amount: var amount } when double.IsFinite(amount) => ("data", "value", amount.ToString("R", CultureInfo.InvariantCulture)),
        DateValue date => ("time", "datetime", date.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
        TimeValue time => ("time", "datetime", time.Time.ToString("HH:mm", CultureInfo.InvariantCulture)),
        MomentValue moment => ("time", "datetime", moment.At.ToString("yyyy-MM-dd'T'HH:mm", CultureInfo.InvariantCulture)),
        _ => ("span", "title", null),
    };

    private void WriteLink(Link link, int depth)
    {
        var isInside = link.Target.StartsWith('#');
        var target = isInside ? laid.PageOf.ContainsKey(link.Target[1..]) ? Markup.Fragment(link.Target[1..]) : null
            : Targets.IsSafe(link.Target) ? link.Target : null;
        if (target is not null)
        {
            page.Open("a", ("href", target), ("rel", isInside ? null : "noreferrer"));
        }

        foreach (var inner in link.Text)
        {
            Write(inner, depth + 1);
        }

        if (target is not null)
        {
            page.Close("a");
        }
    }

    private void WriteTick(TickBox tick)
    {
        page.Open("label", ("class", "tick"));
        page.Void("input", ("type", "checkbox"), ("aria-label", tick.Label.Length > 0 ? null : Around.Length > 0 ? Around : words.Tick));
        page.Text(tick.Label).Close("label");
    }

    private void WriteBar(Bar bar)
    {
        var share = double.IsFinite(bar.Share) ? Math.Max(0, bar.Share) : 0;
        var percent = Markup.Number(Math.Round(share * 100, MidpointRounding.AwayFromZero));
        page.Open("span", ("class", share > 1 ? "gauge over" : "gauge"), ("role", "img"), ("aria-label", $"{percent} %"));
        page.Open("b", ("style", $"width:{Markup.Number(Math.Min(share, 1) * 100)}%")).Close("b");
        if (bar.Policy is { } policy and >= 0 and <= 1)
        {
            page.Open("i", ("style", $"left:{Markup.Number(policy * 100)}%")).Close("i");
        }

        page.Close("span");
    }
}
