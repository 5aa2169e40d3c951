namespace Advance.Sheets.Views;

/// <summary>Every truss, what it carries, and what that asks of its hoists.</summary>
/// <param name="Trusses">In the order written.</param>
/// <param name="Mass">The unit of weights.</param>
/// <param name="Length">The unit of lengths.</param>
/// <param name="Small">The unit of what a hook may be off.</param>
/// <param name="RestsOn">The open questions that may move what hangs; blank where there is none.</param>
public sealed record HoistTableView(IReadOnlyList<HoistTableView.Truss> Trusses, string Mass, string Length, string Small, Cell RestsOn)
{
    /// <summary>The picks of all hangs.</summary>
    public IReadOnlyList<Pick> Hangs { get; init; } = [];

    /// <summary>The kinds of hoists that are used.</summary>
    public IReadOnlyList<HoistKind> Kinds { get; init; } = [];

    /// <summary>Whether a weight is not weighed.</summary>
    public required bool HasUnweighed { get; init; }

    /// <summary>Whether something is outside what these sums are for.</summary>
    public required bool NeedsEngineer { get; init; }

    /// <summary>What is the same for every hoist of a kind.</summary>
    public sealed record HoistKind(Cell Name, Cell Count, Cell Lifts, Cell Holds, Cell Moves, Cell Chain, Cell Speed, Cell Limiter, Cell Brakes, Cell With);

    /// <summary>One truss.</summary>
    /// <param name="Name">On paper.</param>
    /// <param name="Facts">What it is, where it hangs, what it weighs.</param>
    /// <param name="Findings">What rules say about it.</param>
    /// <param name="Loads">What it carries, itself first.</param>
    /// <param name="Forces">How it bends.</param>
    /// <param name="Picks">Along it.</param>
    public sealed record Truss(
        string Name, IReadOnlyList<PairView> Facts, IReadOnlyList<FindingView> Findings, IReadOnlyList<Load> Loads, IReadOnlyList<Force> Forces, IReadOnlyList<Pick> Picks)
    {
        /// <summary>The least that a hook may be off, with its unit and in links: <c>42 mm (2 links)</c>; empty where nothing depends on it.</summary>
        public string Level { get; init; } = "";

        /// <summary>Whether it was worked out that no unevenness brings anything to its limit.</summary>
        public bool IsFree { get; init; }

        /// <summary>What is over its limit once it is further off.</summary>
        public string Over { get; init; } = "";

        /// <summary>After how much travel it is levelled again.</summary>
        public required string Again { get; init; }

        /// <summary>Whether more than two hoists hold it, so that they share only while level.</summary>
        public bool Shares { get; init; }

        /// <summary>Whether a load is off its centre line.</summary>
        public bool HasOffset { get; init; }

        /// <summary>What is between it and the roof besides hoists.</summary>
        public IReadOnlyList<Part> Parts { get; init; } = [];

        /// <summary>Of the bridles that it hangs on.</summary>
        public IReadOnlyList<Leg> Legs { get; init; } = [];

        /// <summary>Whether the length of its shackles is not known, so that legs count none.</summary>
        public bool HasBareLegs { get; init; }

        /// <summary>What the tolerance does not count, as no limit is known of it; empty where it counts all.</summary>
        public string NotCounted { get; init; } = "";
    }

    /// <summary>A sling, steel or shackle; of several alike the one that is used most.</summary>
    /// <param name="What">Its kind.</param>
    /// <param name="At">On which picks or legs.</param>
    /// <param name="Laid">Choked, straight, in a basket.</param>
    /// <param name="When">At rest over people, or moving.</param>
    /// <param name="Carries">Then.</param>
    /// <param name="May">Then.</param>
    /// <param name="Share">In per cent.</param>
    /// <param name="Breaks">How many times that would break it.</param>
    public sealed record Part(Cell What, Cell At, Cell Laid, Cell When, Cell Carries, Cell May, Cell Share, Cell Breaks);

    /// <summary>A leg of a bridle.</summary>
    /// <param name="Bridle">Its name.</param>
    /// <param name="To">The venue's point.</param>
    /// <param name="Of">What it is made of.</param>
    /// <param name="Length">As made.</param>
    /// <param name="Wanted">As it would have to be; blank where it was written.</param>
    /// <param name="FromLevel">Degrees.</param>
    /// <param name="Pull">Moving.</param>
    /// <param name="Hook">How high the hook of the bridle hangs above the floor.</param>
    public sealed record Leg(Cell Bridle, Cell To, Cell Of, Cell Length, Cell Wanted, Cell FromLevel, Cell Pull, Cell Hook);

    /// <summary>Something that it carries, or several that weigh alike.</summary>
    /// <param name="What">In words.</param>
    /// <param name="Mass">Of each.</param>
    /// <param name="How">It is known.</param>
    /// <param name="At">Along the truss, of each; of one that is spread from where to where.</param>
    /// <param name="Offset">From the centre line.</param>
    public sealed record Load(Cell What, Cell Mass, Cell How, Cell At, Cell Offset);

    /// <summary>A moment, a shear, or a share of what bears it.</summary>
    public sealed record Force(string What, Cell Worst, Cell Allowed, Cell Share, string Case);

    /// <summary>A hoist.</summary>
    /// <param name="Name">On paper.</param>
    public sealed record Pick(Cell Name)
    {
        /// <summary>From the first end; of a hang the hole of its frame.</summary>
        public required Cell Along { get; init; }

        /// <summary>The venue's point, or a bridle.</summary>
        public required Cell Point { get; init; }

        /// <summary>Its kind, and whether its body is at the point or at the truss.</summary>
        public required Cell Hoist { get; init; }

        /// <summary>To stage left of the centre line, to stage right of it with a minus.</summary>
        public required Cell X { get; init; }

        /// <summary>Upstage of the downstage edge.</summary>
        public required Cell Y { get; init; }

        /// <summary>All level.</summary>
        public required Cell Level { get; init; }

        /// <summary>The most at rest.</summary>
        public required Cell AtRest { get; init; }

        /// <summary>The most while it moves.</summary>
        public required Cell Moving { get; init; }

        /// <summary>The least.</summary>
        public required Cell Least { get; init; }

        /// <summary>However uneven.</summary>
        public required Cell Bound { get; init; }

        /// <summary>On the hoist, moving, with the dynamic factor.</summary>
        public required Cell Hook { get; init; }

        /// <summary>What it may bear.</summary>
        public required Cell Rating { get; init; }

        /// <summary>In per cent of that.</summary>
        public required Cell Share { get; init; }

        /// <summary>How far it may be high.</summary>
        public required Cell High { get; init; }

        /// <summary>How far it may be low.</summary>
        public required Cell Low { get; init; }

        /// <summary>In which cases it bears most, what is between truss and point, what it is controlled with.</summary>
        public required string Notes { get; init; }
    }
}
