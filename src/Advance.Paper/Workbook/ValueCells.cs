using Advance.Paper.Tree;
using ClosedXML.Excel;

namespace Advance.Paper.Workbook;

/// <summary>Fills cells with numbers, dates and sums.</summary>
internal static class ValueCells
{
    private const double MostDigits = 1e15;

    // Earlier days are counted differently by different programs.
    private static readonly DateOnly FirstDay = new(1900, 3, 1);

    /// <summary>Fills a cell; false, and a fault, when a workbook knows no such value.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="value">What it shall hold.</param>
    /// <param name="columnUnit">The unit that stands in its column's head.</param>
    /// <param name="firstRow">The first row that a sum takes in.</param>
    /// <param name="faults">Takes up what cannot be written.</param>
    public static bool Set(IXLCell cell, MachineValue value, string columnUnit, int firstRow, Faults faults)
    {
        switch (value)
        {
            case NumberValue number when IsWritable(number.Amount):
                cell.SetValue(number.Amount);
                Format(cell, Places(number), number.Unit == columnUnit ? "" : number.Unit);
                return true;
            case SumValue sum when IsWritable(sum.Amount) && cell.Address.RowNumber > firstRow:
                var letter = cell.Address.ColumnLetter;
                cell.FormulaA1 = $"SUBTOTAL(109,{letter}{firstRow}:{letter}{cell.Address.RowNumber - 1})";
                Format(cell, null, sum.Unit == columnUnit ? "" : sum.Unit);
                return true;
            case DateValue date when date.Day >= FirstDay:
                cell.SetValue(date.Day.ToDateTime(TimeOnly.MinValue));
                cell.Style.DateFormat.Format = "yyyy-mm-dd";
                return true;
            case TimeValue time:
                cell.SetValue(time.Time.ToTimeSpan());
                cell.Style.NumberFormat.Format = "hh:mm";
                return true;
            case MomentValue moment when DateOnly.FromDateTime(moment.At) >= FirstDay:
                cell.SetValue(DateTime.SpecifyKind(moment.At, DateTimeKind.Unspecified));
                cell.Style.DateFormat.Format = "yyyy-mm-dd hh:mm";
                return true;
            default:
                faults.Add(FaultKind.BadValue, "A number is not finite, or a day is before March 1900; the workbook has its text.");
                return false;
        }
    }

    private static bool IsWritable(double amount) => double.IsFinite(amount) && Math.Abs(amount) < MostDigits;

    private static int? Places(NumberValue number) => number.Decimals is { } places ? Math.Clamp(places, 0, 9) : null;

    private static void Format(IXLCell cell, int? places, string unit)
    {
        if (places is null && unit.Length == 0)
        {
            return;
        }

        var digits = places switch { null => "General", 0 => "0", _ => "0." + new string('0', places.Value) };
        // Within quotes nothing is a code; a quote itself cannot stand there.
        var quoted = unit.Length == 0 ? "" : $"\" {Cells.Clean(unit).Replace("\"", "″", StringComparison.Ordinal)}\"";
        cell.Style.NumberFormat.Format = digits + quoted;
    }
}
