namespace Advance.Sheets.Views;

/// <summary>The day on one page.</summary>
public sealed record DaySheetView
{
    /// <summary>Where and for whom.</summary>
    public required IReadOnlyList<PairView> Facts { get; init; }

    /// <summary>The show day, in the order written.</summary>
    public required IReadOnlyList<ScheduleLine> Schedule { get; init; }

    /// <summary>Days of the gig beside the show day.</summary>
    public required IReadOnlyList<OtherDay> OtherDays { get; init; }

    /// <summary>Who plays when.</summary>
    public required IReadOnlyList<SetLine> RunningOrder { get; init; }

    /// <summary>The crew.</summary>
    public required IReadOnlyList<PersonLine> People { get; init; }

    /// <summary>Whom to ring.</summary>
    public required IReadOnlyList<PersonLine> Contacts { get; init; }

    /// <summary>Who holds the numbers that are not for this reader; empty where all are here.</summary>
    public required string NumbersWith { get; init; }

    /// <summary>Sound limit, curfew, haze.</summary>
    public required IReadOnlyList<PairView> Limits { get; init; }

    /// <summary>Muster, first aid, hospital, toilets, parking, meals.</summary>
    public required IReadOnlyList<PairView> Welfare { get; init; }

    /// <summary>Crew, weight, vehicles, lines, current in use of each service.</summary>
    public required IReadOnlyList<PairView> Totals { get; init; }

    /// <summary>What is new in this revision; empty for nothing.</summary>
    public required string New { get; init; }

    /// <summary>What keeps the package from being issued.</summary>
    public required IReadOnlyList<FindingView> Stops { get; init; }

    /// <summary>How many concerns the rules have, on a sheet of their own.</summary>
    public required int Concerns { get; init; }

    /// <summary>How many notes.</summary>
    public required int Notes { get; init; }

    /// <summary>What a named person took upon themselves.</summary>
    public required IReadOnlyList<FindingView> Accepted { get; init; }

    /// <summary>The open questions that are needed first.</summary>
    public required IReadOnlyList<QuestionLine> Questions { get; init; }

    /// <summary>How many open questions there are in all.</summary>
    public required int QuestionCount { get; init; }

    /// <summary>The sheets of this package.</summary>
    public required IReadOnlyList<ContentsLine> Contents { get; init; }

    /// <summary>A line of the day.</summary>
    public sealed record ScheduleLine(Cell Time, Cell What, Cell Who, Cell Where, bool IsHold);

    /// <summary>A day beside the show day.</summary>
    /// <param name="Name">Its date, and what it is called in the gig.</param>
    /// <param name="Lines">In the order written.</param>
    public sealed record OtherDay(string Name, IReadOnlyList<ScheduleLine> Lines);

    /// <summary>A set.</summary>
    public sealed record SetLine(Cell From, Cell To, Cell Act, Cell Minutes);

    /// <summary>Somebody, with a number.</summary>
    public sealed record PersonLine(Cell Name, Cell Does, Cell Call, Cell Phone);

    /// <summary>An open question.</summary>
    public sealed record QuestionLine(Cell What, Cell Now, Cell Who, Cell By);

    /// <summary>A sheet of this package.</summary>
    public sealed record ContentsLine(string Id, string Title, string For);
}
