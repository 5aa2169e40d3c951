namespace Advance.Sheets.Views;

/// <summary>What hangs on the venue's points, as a letter to its engineer.</summary>
/// <param name="Head">From whom to whom, for which show.</param>
/// <param name="Basis">How it was worked out and where places are measured from.</param>
/// <param name="Points">The venue's points, in its order, the legs of bridles under them.</param>
/// <param name="Beams">Of its roof.</param>
/// <param name="Roof">All of it.</param>
/// <param name="Assumed">What was assumed.</param>
/// <param name="Findings">What rules say about it.</param>
/// <param name="RestsOn">The open questions that may move what hangs; blank where there is none.</param>
public sealed record PointLoadsView(
    IReadOnlyList<PairView> Head,
    IReadOnlyList<PairView> Basis,
    IReadOnlyList<PointLoadsView.Point> Points,
    IReadOnlyList<PointLoadsView.Beam> Beams,
    IReadOnlyList<PairView> Roof,
    IReadOnlyList<string> Assumed,
    IReadOnlyList<FindingView> Findings,
    Cell RestsOn)
{
    /// <summary>The unit of weights.</summary>
    public required string Mass { get; init; }

    /// <summary>The unit of lengths.</summary>
    public required string Length { get; init; }

    /// <summary>The unit of moments of beams.</summary>
    public required string Moment { get; init; }

    /// <summary>The unit of their shear.</summary>
    public required string Force { get; init; }

    /// <summary>Whether weights stand in kN, too.</summary>
    public required bool IsMetric { get; init; }

    /// <summary>Whether something is pulled sideways.</summary>
    public required bool HasSideways { get; init; }

    /// <summary>Whether wind or a line pushes something sideways.</summary>
    public required bool IsPushed { get; init; }

    /// <summary>Whether something hangs on a bridle.</summary>
    public required bool HasBridles { get; init; }

    /// <summary>Bays of its roof.</summary>
    public required IReadOnlyList<Bay> Bays { get; init; }

    /// <summary>Each truss with its hoists, so that the letter stands alone.</summary>
    public required IReadOnlyList<Hung> Trusses { get; init; }

    /// <summary>What the wind does to what hangs in the open, in words; empty for nothing.</summary>
    public required IReadOnlyList<Cell> Wind { get; init; }

    /// <summary>Whether the points can be drawn.</summary>
    public required bool IsDrawn { get; init; }

    /// <summary>Picks that hang on nothing that the venue has told of; empty where all do.</summary>
    public required string Nowhere { get; init; }

    /// <summary>A bay of the roof.</summary>
    public sealed record Bay(Cell Name, Cell Points, Cell All, Cell Weight, Cell Limit, Cell Share);

    /// <summary>A point, or a leg of a bridle on it.</summary>
    /// <param name="Name">The venue's; of a leg, the bridle's.</param>
    /// <param name="IsLeg">Whether it is a leg.</param>
    public sealed record Point(Cell Name, bool IsLeg)
    {
        /// <summary>To stage left of the centre line, to stage right of it with a minus.</summary>
        public Cell X { get; init; } = Cell.Blank;

        /// <summary>Upstage of the downstage edge.</summary>
        public Cell Y { get; init; } = Cell.Blank;

        /// <summary>Of the steel above the floor.</summary>
        public Cell Height { get; init; } = Cell.Blank;

        /// <summary>On it.</summary>
        public Cell Hangs { get; init; } = Cell.Blank;

        /// <summary>The roof beam that it is on, in words; empty where nobody says.</summary>
        public string Beam { get; init; } = "";

        /// <summary>The case of level and uneven in which it carries most at rest; empty where nobody knows.</summary>
        public string Worst { get; init; } = "";

        /// <summary>Straight down, at rest.</summary>
        public Cell AtRest { get; init; } = Cell.Blank;

        /// <summary>The same in kN.</summary>
        public Cell AtRestWeight { get; init; } = Cell.Blank;

        /// <summary>Straight down, moving.</summary>
        public Cell Moving { get; init; } = Cell.Blank;

        /// <summary>The same in kN.</summary>
        public Cell MovingWeight { get; init; } = Cell.Blank;

        /// <summary>Straight down, when a load catches.</summary>
        public Cell Snag { get; init; } = Cell.Blank;

        /// <summary>At rest.</summary>
        public Cell Sideways { get; init; } = Cell.Blank;

        /// <summary>What wind and lines push, whichever way.</summary>
        public Cell Pushed { get; init; } = Cell.Blank;

        /// <summary>Degrees clockwise from upstage.</summary>
        public Cell Bearing { get; init; } = Cell.Blank;

        /// <summary>What it may carry.</summary>
        public Cell Limit { get; init; } = Cell.Blank;

        /// <summary>What its limit is for, and by whom.</summary>
        public Cell RatedFor { get; init; } = Cell.Blank;

        /// <summary>In per cent.</summary>
        public Cell Share { get; init; } = Cell.Blank;
    }

    /// <summary>A truss.</summary>
    /// <param name="Name">On paper.</param>
    /// <param name="What">Made of, how long.</param>
    /// <param name="Trim">Of its lower chord above the floor.</param>
    /// <param name="Weight">All that hangs.</param>
    /// <param name="Hoists">Kinds, how many, how fast, body up or down, what they lift and hold over people.</param>
    /// <param name="Below">Who is below.</param>
    /// <param name="Secondary">What holds it when a hoist lets go.</param>
    public sealed record Hung(Cell Name, Cell What, Cell Trim, Cell Weight, Cell Hoists, Cell Below, Cell Secondary);

    /// <summary>A beam.</summary>
    public sealed record Beam(Cell Name, Cell Carries, Cell All, Cell Moment, Cell MomentAllowed, Cell MomentShare, Cell Shear, Cell ShearAllowed, Cell ShearShare);
}
