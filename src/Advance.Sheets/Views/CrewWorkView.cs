namespace Advance.Sheets.Views;

/// <summary>The way in, who comes when, and what is done in which order.</summary>
public sealed record CrewWorkView
{
    /// <summary>Who comes when.</summary>
    public required IReadOnlyList<CallLine> Calls { get; init; }

    /// <summary>Muster, first aid, hospital, key, meals.</summary>
    public required IReadOnlyList<PairView> Safety { get; init; }

    /// <summary>From the road to the stage.</summary>
    public required IReadOnlyList<AccessLine> Access { get; init; }

    /// <summary>Whether any step of the way has a clear width.</summary>
    public required bool HasWidths { get; init; }

    /// <summary>What is said in place of the way in where nobody knows it; blank where it is known.</summary>
    public required Cell AccessUnknown { get; init; }

    /// <summary>Vehicles, with driver and where they stand.</summary>
    public required IReadOnlyList<PairView> Vehicles { get; init; }

    /// <summary>What the rules have to say about the way in, the crew and their hands.</summary>
    public required IReadOnlyList<FindingView> Findings { get; init; }

    /// <summary>Whether something is lifted above heads.</summary>
    public required bool IsRaised { get; init; }

    /// <summary>Whether something is lifted that one alone may not.</summary>
    public required bool IsHeavy { get; init; }

    /// <summary>Tasks and holds, in the order of the times.</summary>
    public required IReadOnlyList<TaskLine> Tasks { get; init; }

    /// <summary>Whether any of them has a time: on several days nobody says which is the load-in's.</summary>
    public bool HasTimes => Tasks.Any(task => task.Time.Text.Length > 0);

    /// <summary>When it starts and is done, in words.</summary>
    public required IReadOnlyList<PairView> Times { get; init; }

    /// <summary>One call.</summary>
    /// <param name="At">When.</param>
    /// <param name="Who">Names, or how many hands.</param>
    /// <param name="Does">What they do.</param>
    /// <param name="Skill">What they can do.</param>
    /// <param name="Meet">Where they meet.</param>
    public sealed record CallLine(Cell At, Cell Who, Cell Does, Cell Skill, Cell Meet);

    /// <summary>A link of the chain from road to stage.</summary>
    public sealed record AccessLine(Cell What, Cell Wide, Cell High, Cell Long, Cell Note);

    /// <summary>One piece of work.</summary>
    /// <param name="Time">From when.</param>
    /// <param name="Until">To when.</param>
    /// <param name="Area">Where.</param>
    /// <param name="Task">Verb first.</param>
    /// <param name="Hands">How many, of which skill.</param>
    /// <param name="Leads">Who does it, the one who leads first; who signs, for a hold.</param>
    /// <param name="Needs">What must be done before.</param>
    /// <param name="Cases">What it needs out of the vehicle; on the way out, what goes in.</param>
    /// <param name="Position">Where in the order of loading that is.</param>
    /// <param name="Lift">The heaviest thing, and how many lift it.</param>
    /// <param name="Danger">What can hurt.</param>
    /// <param name="IsHold">Whether all stop there.</param>
    public sealed record TaskLine(
        Cell Time, Cell Until, Cell Area, Cell Task, Cell Hands, Cell Leads, Cell Needs, Cell Cases, Cell Position, Cell Lift, string Danger, bool IsHold);
}
