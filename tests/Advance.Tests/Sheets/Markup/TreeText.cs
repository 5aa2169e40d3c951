using System.Collections;
using System.Reflection;
using System.Text;
using Advance.Paper.Pictures;
using Advance.Paper.Tree;

namespace Advance.Tests.Sheets.Markup;

/// <summary>Writes all that a tree holds as text, so that two trees can be compared and the difference read.</summary>
internal static class TreeText
{
    public static string Of(object? node)
    {
        var text = new StringBuilder();
        Write(text, node, 0);
        return text.ToString();
    }

    private static void Write(StringBuilder text, object? node, int depth)
    {
        switch (node)
        {
            case null:
                text.Append("–\n");
                break;
            case string words:
                text.Append('"').Append(string.Concat(words.Select(Letter))).Append("\"\n");
                break;
            case IEnumerable list:
                text.Append('\n');
                foreach (var item in list)
                {
                    text.Append(' ', depth * 2).Append("- ");
                    Write(text, item, depth + 1);
                }

                break;
            case Scene scene:
                text.Append("scene ").Append(scene.Title).Append('\n');
                break;
            case Block or Inline or MachineValue or Row or RowGroup or Cell or TableColumn or Pair or ColumnsPart:
                text.Append(node.GetType().Name).Append('\n');
                foreach (var property in node.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance))
                {
                    text.Append(' ', depth * 2).Append(property.Name).Append(": ");
                    Write(text, property.GetValue(node), depth + 1);
                }

                break;
            default:
                text.Append(node is double number ? number.ToString("R") : node is DateTime or TimeOnly or DateOnly ? ((IFormattable)node).ToString("O", null) : node).Append('\n');
                break;
        }
    }

    private static string Letter(char letter) => letter is < ' ' or > '~' ? $"\\u{(int)letter:X4}" : letter.ToString();
}
