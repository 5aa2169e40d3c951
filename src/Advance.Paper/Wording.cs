namespace Advance.Paper;

/// <summary>The few words that the printer adds by itself. Default English.</summary>
public sealed record Wording
{
    /// <summary>Before the number of the page.</summary>
    public string Page { get; init; } = "page";

    /// <summary>Between the number of the page and that of all pages.</summary>
    public string Of { get; init; } = "of";

    /// <summary>Over the day of issue.</summary>
    public string Issued { get; init; } = "issued";

    /// <summary>The signal word of a danger.</summary>
    public string Danger { get; init; } = "DANGER";

    /// <summary>The signal word of a warning.</summary>
    public string Warning { get; init; } = "WARNING";

    /// <summary>The signal word of a caution.</summary>
    public string Caution { get; init; } = "CAUTION";

    /// <summary>What a stop opens with.</summary>
    public string Stop { get; init; } = "STOP";

    /// <summary>What a concern opens with.</summary>
    public string Concern { get; init; } = "CONCERN";

    /// <summary>After a group's head on a page that it goes on to.</summary>
    public string Continued { get; init; } = "continued";

    /// <summary>Over the workbook's column that says in which group a row is.</summary>
    public string Group { get; init; } = "Group";

    /// <summary>What a tick box is called that nothing names.</summary>
    public string Tick { get; init; } = "done";

    /// <summary>Before the choice of a reader on the HTML page.</summary>
    public string SheetsFor { get; init; } = "Sheets for";

    /// <summary>All readers.</summary>
    public string Everybody { get; init; } = "everybody";

    /// <summary>Before the field of the search.</summary>
    public string Find { get; init; } = "Find";

    /// <summary>What was found: {0} lines on {1} sheets.</summary>
    public string Found { get; init; } = "{0} lines on {1} sheets";

    /// <summary>Takes all ticks away.</summary>
    public string ClearTicks { get; init; } = "Clear ticks";

    /// <summary>Asked before that.</summary>
    public string ClearTicksQuestion { get; init; } = "Take all ticks of this package away?";

    /// <summary>Before the ratio of a drawing and the name of the paper, as in <c>1 : 50 at A4</c>.</summary>
    public string At { get; init; } = "at";
}
