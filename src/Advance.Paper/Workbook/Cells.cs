using System.Text;
using ClosedXML.Excel;

namespace Advance.Paper.Workbook;

/// <summary>Fills cells. Text goes in as text, whatever it looks like: only the tree makes formulas.</summary>
internal static class Cells
{
    private const int MostText = 32_767;

    public static void SetText(IXLCell cell, string text)
    {
        var clean = Clean(text);
        if (clean.Length == 0)
        {
            return;
        }

        cell.DataType = XLDataType.Text;
        cell.SetValue(clean);
        // A spreadsheet program keeps what begins like a formula as text only when told so.
        if (clean[0] is '=' or '+' or '-' or '@' or '\'')
        {
            cell.Style.IncludeQuotePrefix = true;
        }
    }

    /// <summary>What XML can carry and a cell can hold.</summary>
    public static string Clean(string text)
    {
        var isClean = text.Length <= MostText;
        foreach (var c in text)
        {
            isClean &= IsPlain(c);
        }

        if (isClean)
        {
            return text;
        }

        var clean = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (clean.Length + rune.Utf16SequenceLength > MostText)
            {
                break;
            }

            if (rune.Value is '\t' or '\n' or (>= ' ' and not 0x7F and not 0xFFFE and not 0xFFFF))
            {
                clean.Append(rune);
            }
        }

        return clean.ToString();
    }

    private static bool IsPlain(char c) => c is (>= ' ' and < '\u007F') or (>= '\u00A0' and < '\uD800') or (>= '\uE000' and < '\uFFFE');
}
