using Advance.Domain.Facts;
using Advance.Domain.Findings;
using Advance.Domain.Wording;

namespace Advance.Reading.Tables;

/// <summary>What can be wrong with a table, in words.</summary>
internal static class TableFindings
{
    public static Finding UnclosedQuote(Mark at) =>
        Fault("unclosed", at, "This quote is not closed before the file ends", "Close it; a quote inside a quoted cell is written twice.");

    public static Finding AfterQuote(Mark at) =>
        Fault("after-close", at, "Text follows after the cell's closing quote", "Put the whole cell in quotes, and write a quote inside it twice.");

    public static Finding HeadingTwice(Mark at, string heading) =>
        Fault("duplicate-key", at, $"{heading} is the heading of two columns", "Keep one of them, or give this one its own heading.");

    public static Finding HeadingBlank(Mark at) =>
        Fault("key-blank", at, "This column has no heading", "Write what the column holds, or take it out.");

    public static Finding NoColumn(Mark at, string key, string where) =>
        Fault("missing-key", at, $"This table has no column {key}, which every row of {where} needs", $"Add the heading {key}.");

    public static Finding TooManyCells(Mark at, int headings) =>
        Fault("too-many-cells", at, $"This cell stands right of the last of {headings} headings", "Take it out, or give its column a heading.");

    public static Finding NoHeadings(Mark at) =>
        Fault("blank", at, "This table has no headings", "Write the headings in its first line, with | between them.");

    public static Finding Folded(Mark at) =>
        Fault("folded-table", at, "> joins the lines of a table to one", "Write | instead.");

    public static Finding NotAWorkbook(Mark at, string file) =>
        Fault("not-a-workbook", at, $"{file} cannot be read as a workbook", "Save it again as .xlsx without a password, or as .csv.");

    public static Finding WorkbookTooLarge(Mark at, string file) =>
        Fault("too-large", at, $"{file} holds far more than a stock", "Check that this is the file that was meant.");

    public static Finding TooManyRows(Mark at, int most) =>
        Fault("too-large", at, $"The sheet has more than {most} rows", "Delete the rows that are not needed, also blank ones at the end.");

    private static Finding Fault(string rule, Mark at, Words says, Words cure) => new($"reading/{rule}", Severity.Error, at, says, cure);
}
