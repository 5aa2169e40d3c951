using System.Globalization;
using Advance.Domain.Wording;
using Advance.Paper.Tree;

namespace Advance.Sheets.Views;

/// <summary>
/// What a template prints as one value: words for people, a value for machines, what is still open about it, and how it fared when it was
/// judged. A template that prints a cell prints all four; whoever wants the words alone asks for <c>.text</c>.
/// </summary>
/// <param name="Text">As it is read; empty for nothing. Nothing in it is markup.</param>
public sealed record Cell(string Text)
{
    /// <summary>Nothing at all.</summary>
    public static Cell Blank { get; } = new("");

    /// <summary>What the workbook holds; null where the words are all there is. Default null.</summary>
    public MachineValue? Value { get; init; }

    /// <summary>
    /// Not null where the value is still to be confirmed: a small TBC tag follows, with these few words (who, and by when) in it. May be
    /// empty for a tag that says no more than TBC. Default null.
    /// </summary>
    public string? Tbc { get; init; }

    /// <summary>How the value fared when it was judged; it marks the whole field that the cell stands in. Default plain.</summary>
    public Verdict Verdict { get; init; }

    /// <summary>Not null where it is a figure of the plan: what <c>advance explain</c> is asked for. Default null.</summary>
    public string? Address { get; init; }

    /// <summary>True for what the reader came for: set in bold. Default false.</summary>
    public bool Strong { get; init; }

    /// <summary>True where nothing would be printed; a template's <c>if</c> takes such a cell for false.</summary>
    public bool IsBlank => Text.Length == 0 && Tbc is null && Verdict == Verdict.Plain;

    /// <summary>Words alone.</summary>
    public static Cell Of(string text) => text.Length == 0 ? Blank : new(text);

    /// <summary>A number.</summary>
    /// <param name="amount">In the unit given. What is not finite is printed as its text alone.</param>
    /// <param name="text">As it is read, without the unit of the column.</param>
    /// <param name="unit">Its unit when it is not that of the column; empty for none.</param>
    public static Cell Number(double amount, string text, string unit = "") =>
        new(text) { Value = double.IsFinite(amount) ? new NumberValue(amount, unit) : null };

    /// <summary>A whole number, printed as it is.</summary>
    public static Cell Number(int amount) => Number(amount, amount.ToString(CultureInfo.InvariantCulture));

    /// <summary>The sum of the numbers above in the same column.</summary>
    /// <param name="amount">As worked out. What is not finite is printed as its text alone.</param>
    /// <param name="text">As it is read, without the unit of the column.</param>
    /// <param name="unit">Its unit when it is not that of the column; empty for none.</param>
    public static Cell Sum(double amount, string text, string unit = "") =>
        new(text) { Value = double.IsFinite(amount) ? new SumValue(amount, unit) : null };

    /// <summary>A day.</summary>
    /// <param name="day">The local day at the place of the event.</param>
    /// <param name="text">As it is read. Default <c>Sat 12 Sep 2026</c>.</param>
    public static Cell Date(DateOnly day, string? text = null) => new(text ?? Speech.Date(day)) { Value = new DateValue(day) };

    /// <summary>A time of day.</summary>
    /// <param name="time">Local time at the place of the event.</param>
    /// <param name="text">As it is read. Default <c>19:30</c>.</param>
    public static Cell Time(TimeOnly time, string? text = null) =>
        new(text ?? time.ToString("HH:mm", CultureInfo.InvariantCulture)) { Value = new TimeValue(time) };

    /// <summary>A day and a time.</summary>
    /// <param name="at">Local time at the place of the event.</param>
    /// <param name="text">As it is read.</param>
    public static Cell Moment(DateTime at, string text) => new(text) { Value = new MomentValue(at) };
}
