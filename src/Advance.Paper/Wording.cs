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

    /// <summary>Before the ratio of a drawing and the name of the paper, as in <c>1 : 50 at A4</c>.</summary>
    public string At { get; init; } = "at";
}
