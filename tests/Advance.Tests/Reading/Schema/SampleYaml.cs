using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Advance.Tests.Reading.Schema;

/// <summary>Writes a sample as somebody might have typed it.</summary>
/// <param name="next">Decides between ways to write the same.</param>
internal sealed partial class SampleYaml(Func<int, int> next)
{
    private readonly StringBuilder text = new();

    public string Write(JsonNode sample)
    {
        Append(sample, 0);
        return text.ToString();
    }

    private void Append(JsonNode? node, int indent)
    {
        switch (node)
        {
            case JsonObject { Count: > 0 } map when indent == 0 || HasBlock(map) || next(3) > 0:
                foreach (var (key, value) in map)
                {
                    text.Append(indent == 0 && text.Length == 0 ? "" : "\n").Append(' ', indent).Append(Scalar(key)).Append(": ");
                    Append(value, indent + 2);
                }

                break;
            case JsonArray { Count: > 0 } list when HasBlock(list) || next(2) > 0:
                foreach (var item in list)
                {
                    text.Append('\n').Append(' ', indent).Append("- ");
                    Append(item, indent + 2);
                }

                break;
            case JsonValue value when value.GetValue<string>() is var said && said.Contains('\n'):
                text.Append('|').Append(string.Concat(said.Split('\n').Select(line => $"\n{new string(' ', indent)}{line}")));
                break;
            default:
                text.Append(FlowText(node));
                break;
        }
    }

    // A block of lines cannot stand in brackets or braces.
    private static bool HasBlock(JsonNode? node) => node switch
    {
        JsonValue value => value.GetValue<string>().Contains('\n'),
        JsonArray list => list.Any(HasBlock),
        JsonObject map => map.Any(entry => HasBlock(entry.Value)),
        _ => false,
    };

    private string FlowText(JsonNode? node) => node switch
    {
        null => "",
        JsonObject map => $"{{{string.Join(", ", map.Select(entry => $"{Scalar(entry.Key, inFlow: true)}: {FlowText(entry.Value)}"))}}}",
        JsonArray list => $"[{string.Join(", ", list.Select(item => item is null ? "''" : FlowText(item)))}]",
        _ => Scalar(node.GetValue<string>(), inFlow: true),
    };

    private string Scalar(string said, bool inFlow = false) =>
        said.Length > 0 && (inFlow ? PlainInFlow() : Plain()).IsMatch(said) && next(3) > 0 ? said
        : next(2) == 0 || said.Contains('\n') ? $"\"{said.Replace("\\", "\\\\").Replace("\"", "\\\"").Replace("\n", "\\n")}\""
        : $"'{said.Replace("'", "''")}'";

    [GeneratedRegex(@"^[A-Za-z0-9](?:[^:#\n\\]|:(?=\S))*$")]
    private static partial Regex Plain();

    [GeneratedRegex(@"^[A-Za-z0-9](?:[^:#\n\\,\[\]{}""']|:(?=[0-9]))*$")]
    private static partial Regex PlainInFlow();
}
