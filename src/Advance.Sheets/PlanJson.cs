using System.Collections;
using System.Text.Encodings.Web;
using System.Text.Json;
using Advance.Domain.Findings;
using Advance.Domain.Wording;
using Advance.Paper.Tree;
using Advance.Planning;
using Advance.Sheets.Templating;
using Cell = Advance.Sheets.Views.Cell;

namespace Advance.Sheets;

/// <summary>
/// <c>plan.json</c>: the views, for other programs. A cell is an object with <c>text</c>, and where there is more to say <c>value</c>,
/// <c>unit</c>, <c>address</c> (for a figure of the plan), <c>tbc</c> and <c>verdict</c>. Names are those that templates use, with hyphens.
/// </summary>
internal sealed class PlanJson
{
    private static readonly JsonWriterOptions Options = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, NewLine = "\n" };

    private readonly Utf8JsonWriter json;

    private PlanJson(Utf8JsonWriter json) => this.json = json;

    /// <summary>Writes it.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="views">Views by the name of their template, in the order of the package.</param>
    public static byte[] Write(Plan plan, IEnumerable<(string Template, object View)> views)
    {
        using var buffer = new MemoryStream();
        using (var writer = new Utf8JsonWriter(buffer, Options))
        {
            new PlanJson(writer).Write(plan.Brief.Gig.Title, plan.Brief.Gig.Revision, Findings(plan), views);
        }

        buffer.WriteByte((byte)'\n');
        return buffer.ToArray();
    }

    private static IEnumerable<(string Rule, string Severity, string Where, string Says)> Findings(Plan plan)
    {
        var speech = Speech.Of(plan.Brief.Company.Units);
        return plan.Findings.Select(finding => (
            finding.Rule,
            finding.Accepted is null ? finding.Severity.Word() : "accepted",
            finding.Where.Text,
            speech.Say(finding.Says)));
    }

    private void Write(
        string title, string? revision, IEnumerable<(string Rule, string Severity, string Where, string Says)> findings, IEnumerable<(string Template, object View)> views)
    {
        json.WriteStartObject();
        json.WriteString("gig", title);
        json.WriteString("revision", revision);
        json.WriteStartArray("findings");
        foreach (var (rule, severity, where, says) in findings)
        {
            json.WriteStartObject();
            json.WriteString("rule", rule);
            json.WriteString("severity", severity);
            json.WriteString("where", where);
            json.WriteString("says", says);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartObject("sheets");
        foreach (var (template, view) in views)
        {
            json.WritePropertyName(template);
            WriteValue(view);
        }

        json.WriteEndObject();
        json.WriteEndObject();
    }

    private void WriteValue(object? value)
    {
        switch (value)
        {
            case null:
                json.WriteNullValue();
                break;
            case string text:
                json.WriteStringValue(text);
                break;
            case bool yes:
                json.WriteBooleanValue(yes);
                break;
            case int number:
                json.WriteNumberValue(number);
                break;
            case Cell cell:
                WriteCell(cell);
                break;
            case IEnumerable list:
                json.WriteStartArray();
                foreach (var item in list)
                {
                    WriteValue(item);
                }

                json.WriteEndArray();
                break;
            default:
                WriteView(value);
                break;
        }
    }

    private void WriteView(object view)
    {
        var shown = ViewMembers.Of(view.GetType());
        json.WriteStartObject();
        foreach (var name in shown.Names)
        {
            json.WritePropertyName(name.Replace('_', '-'));
            WriteValue(shown.Get(view, name));
        }

        json.WriteEndObject();
    }

    private void WriteCell(Cell cell)
    {
        json.WriteStartObject();
        json.WriteString("text", cell.Text);
        switch (cell.Value)
        {
            case NumberValue { Amount: var amount, Unit: var unit }:
                json.WriteNumber("value", amount);
                if (unit.Length > 0)
                {
                    json.WriteString("unit", unit);
                }

                break;
            case DateValue { Day: var day }:
                json.WriteString("value", day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
                break;
            case TimeValue { Time: var time }:
                json.WriteString("value", time.ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture));
                break;
        }

        if (cell.Address is { } address)
        {
            json.WriteString("address", address);
        }

        if (cell.Tbc is { } tbc)
        {
            json.WriteString("tbc", tbc);
        }

        if (cell.Verdict != Verdict.Plain)
        {
            json.WriteString("verdict", SnakeCase.Of(cell.Verdict.ToString(), '-'));
        }

        json.WriteEndObject();
    }
}
