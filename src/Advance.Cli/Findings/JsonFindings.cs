using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Advance.Domain.Findings;
using Advance.Domain.Wording;

namespace Advance.Cli.Findings;

/// <summary>Findings for other programs: a list of objects, in the order of the other forms.</summary>
internal static class JsonFindings
{
    private static readonly JsonWriterOptions Options = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, NewLine = "\n" };

    public static string Print(IReadOnlyList<Finding> findings, Speech speech)
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, Options))
        {
            json.WriteStartArray();
            foreach (var finding in findings)
            {
                Write(json, finding, speech);
            }

            json.WriteEndArray();
        }

        return Encoding.UTF8.GetString(buffer.ToArray()) + "\n";
    }

    private static void Write(Utf8JsonWriter json, Finding finding, Speech speech)
    {
        json.WriteStartObject();
        json.WriteString("rule", finding.Rule);
        json.WriteString("severity", finding.Severity.Word());
        json.WriteString("file", finding.At.File);
        json.WriteNumber("line", finding.At.Line);
        json.WriteNumber("column", finding.At.Column);
        json.WriteString("where", finding.Where.Text);
        json.WriteString("says", speech.Say(finding.Says));
        json.WriteString("cure", speech.Say(finding.Cure));
        if (finding.Figures is { } figures)
        {
            json.WriteString("figures", speech.Say(figures));
        }

        if (finding.Accepted is { } accepted)
        {
            json.WriteString("accepted-by", accepted.By);
        }

        json.WriteBoolean("cannot-be-judged", finding.CannotBeJudged);
        json.WriteEndObject();
    }
}
