namespace Advance.Sheets.Views;

/// <summary>The day on one page.</summary>
public sealed record DaySheetView
{
    /// <summary>Where and for whom.</summary>
    public required IReadOnlyList<PairView> Facts { get; init; }

    /// <summary>In the order written.</summary>
    public required IReadOnlyList<ScheduleLine> Schedule { get; init; }

    /// <summary>Who plays when.</summary>
    public required IReadOnlyList<SetLine> RunningOrder { get; init; }

    /// <summary>The crew.</summary>
    public required IReadOnlyList<PersonLine> People { get; init; }

    /// <summary>Whom to ring.</summary>
    public required IReadOnlyList<PersonLine> Contacts { get; init; }

    /// <summary>Sound limit, curfew, haze.</summary>
    public required IReadOnlyList<PairView> Limits { get; init; }

    /// <summary>Muster, first aid, hospital, toilets, parking, meals.</summary>
    public required IReadOnlyList<PairView> Welfare { get; init; }

    /// <summary>How to get in.</summary>
    public required IReadOnlyList<AccessLine> Access { get; init; }

    /// <summary>What is said in place of the way in where nobody knows it.</summary>
    public required Cell AccessUnknown { get; init; }

    /// <summary>Pieces, weight, lines.</summary>
    public required IReadOnlyList<PairView> Totals { get; init; }

    /// <summary>What is new in this revision; empty for nothing.</summary>
    public required string New { get; init; }

    /// <summary>What stops the package, then concerns.</summary>
    public required IReadOnlyList<FindingLine> Findings { get; init; }

    /// <summary>What a named person took upon themselves.</summary>
    public required IReadOnlyList<AcceptedLine> Accepted { get; init; }

    /// <summary>The open questions that are needed first.</summary>
    public required IReadOnlyList<QuestionLine> Questions { get; init; }

    /// <summary>How many open questions there are in all.</summary>
    public required int QuestionCount { get; init; }

    /// <summary>The sheets of this package.</summary>
    public required IReadOnlyList<ContentsLine> Contents { get; init; }

    /// <summary>A line of the day.</summary>
    public sealed record ScheduleLine(Cell Time, Cell What, Cell Who, Cell Where, bool IsHold);

    /// <summary>A set.</summary>
    public sealed record SetLine(Cell From, Cell To, Cell Act, Cell Minutes);

    /// <summary>Somebody, with a number.</summary>
    public sealed record PersonLine(Cell Name, Cell Does, Cell Call, Cell Phone);

    /// <summary>A link of the chain from road to stage.</summary>
    public sealed record AccessLine(Cell What, Cell Wide, Cell High, Cell Long, Cell Note);

    /// <summary>A finding.</summary>
    /// <param name="Weight"><c>stop</c>, <c>concern</c> or <c>note</c>.</param>
    /// <param name="Says">Its first line.</param>
    /// <param name="Rule">Its name.</param>
    /// <param name="Cure">What would put it right.</param>
    /// <param name="RestsOn">The open questions behind it; blank where there are none.</param>
    public sealed record FindingLine(string Weight, string Says, string Rule, string Cure, Cell RestsOn);

    /// <summary>An accepted finding.</summary>
    public sealed record AcceptedLine(string Rule, string Where, string Figures, string By, string Why);

    /// <summary>An open question.</summary>
    public sealed record QuestionLine(Cell What, Cell Now, Cell Who, Cell By);

    /// <summary>A sheet of this package.</summary>
    public sealed record ContentsLine(string Id, string Title, string For);
}
