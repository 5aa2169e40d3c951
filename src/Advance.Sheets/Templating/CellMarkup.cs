using System.Globalization;
using Advance.Paper.Tree;
using Cell = Advance.Sheets.Views.Cell;

namespace Advance.Sheets.Templating;

/// <summary>Writes cells as elements of the subset.</summary>
internal static class CellMarkup
{
    public static TrustedMarkup Of(Cell cell)
    {
        var text = Strong(cell, Valued(cell)) + Tag(cell);
        return new(cell.Verdict == Verdict.Plain
            ? text
            : $"<span class=\"judged\" data-verdict=\"{SnakeCase.Of(cell.Verdict.ToString(), '-')}\">{text}</span>");
    }

    private static string Valued(Cell cell)
    {
        var text = Escaping.Escape(cell.Text);
        return cell.Value switch
        {
            NumberValue number => $"<data value=\"{Number(number.Amount)}\"{Unit(number.Unit)}{Decimals(number.Decimals)}>{text}</data>",
            SumValue sum => $"<data class=\"sum\" value=\"{Number(sum.Amount)}\"{Unit(sum.Unit)}>{text}</data>",
            DateValue date => Time(date.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), text),
            TimeValue time => Time(time.Time.ToString("HH:mm:ss.FFFFFFF", CultureInfo.InvariantCulture), text),
            MomentValue moment => Time(moment.At.ToString("yyyy-MM-ddTHH:mm:ss.FFFFFFF", CultureInfo.InvariantCulture), text),
            _ => text,
        };
    }

    private static string Strong(Cell cell, string markup) => cell.Strong && markup.Length > 0 ? $"<strong>{markup}</strong>" : markup;

    private static string Tag(Cell cell) =>
        cell.Tbc is null ? "" : $"{(cell.Text.Length > 0 ? " " : "")}<mark class=\"tbc\">{Escaping.Escape($"TBC {cell.Tbc}".Trim())}</mark>";

    private static string Number(double amount) => amount.ToString("R", CultureInfo.InvariantCulture);

    private static string Time(string machine, string text) => $"<time datetime=\"{machine}\">{text}</time>";

    private static string Unit(string unit) => unit.Length > 0 ? $" data-unit=\"{Escaping.Escape(unit)}\"" : "";

    private static string Decimals(int? decimals) =>
        decimals is { } digits ? string.Create(CultureInfo.InvariantCulture, $" data-decimals=\"{digits}\"") : "";
}
