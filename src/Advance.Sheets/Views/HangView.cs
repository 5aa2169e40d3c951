namespace Advance.Sheets.Views;

/// <summary>One hang, box by box and pick by pick, to be flown from.</summary>
/// <param name="Id">Of the sheet.</param>
/// <param name="Name">Of the hang.</param>
/// <param name="IsDrawn">Whether it could be worked out, so that there is a side view.</param>
/// <param name="Facts">Place, aim, frame, tilt, weight, heights and what else holds for all of it.</param>
/// <param name="Boxes">From the top down.</param>
/// <param name="Picks">In the order written.</param>
/// <param name="Findings">What rules say about it.</param>
/// <param name="RestsOn">The open questions that it hangs on.</param>
public sealed record HangView(
    string Id, string Name, bool IsDrawn, IReadOnlyList<PairView> Facts, IReadOnlyList<HangView.Box> Boxes, IReadOnlyList<HangView.Pick> Picks, IReadOnlyList<FindingView> Findings, Cell RestsOn)
{
    /// <summary>How it would tilt on each hole alone, in words; empty where nobody knows.</summary>
    public string Holes { get; init; } = "";

    /// <summary>Whether links and pins could be worked out.</summary>
    public bool HasForces { get; init; }

    /// <summary>Whether a limit of links or pins is known.</summary>
    public bool HasLimits { get; init; }

    /// <summary>Whether a box has an address on the network.</summary>
    public bool HasAddresses { get; init; }

    /// <summary>Whether something is set on a box.</summary>
    public bool HasSettings { get; init; }

    /// <summary>Whether a weight is not weighed.</summary>
    public bool HasUnweighed { get; init; }

    /// <summary>Whether a chain is on a point, so that it can be off plumb.</summary>
    public bool HasPlumb { get; init; }

    /// <summary>Whether a line pulls it back.</summary>
    public bool IsPulled { get; init; }

    /// <summary>Whether the drawing is cut above or below, so that its dimensions count.</summary>
    public bool IsCut { get; init; }

    /// <summary>How many columns the table of picks has besides the first.</summary>
    public int PickColumns => 10 + (IsMetric ? 1 : 0) + (HasPlumb ? 1 : 0);

    /// <summary>The unit of weights.</summary>
    public required string Mass { get; init; }

    /// <summary>The unit of lengths.</summary>
    public required string Length { get; init; }

    /// <summary>The unit of forces.</summary>
    public required string Force { get; init; }

    /// <summary>Whether the paper speaks metric, so that weights stand in kN, too.</summary>
    public required bool IsMetric { get; init; }

    /// <summary>One box.</summary>
    public sealed record Box(Cell Position, Cell Name, Cell Item)
    {
        /// <summary>Angle to what it hangs on, degrees.</summary>
        public required Cell Splay { get; init; }

        /// <summary>How far down it looks, degrees.</summary>
        public required Cell Looks { get; init; }

        /// <summary>What joins it to the one above, and how many pins that takes.</summary>
        public required Cell Joined { get; init; }

        /// <summary>Pull of its rear link.</summary>
        public required Cell Rear { get; init; }

        /// <summary>On its front pins.</summary>
        public required Cell Front { get; init; }

        /// <summary>The larger share of their limits, per cent.</summary>
        public required Cell Use { get; init; }

        /// <summary>What feeds it, by which lead.</summary>
        public required Cell SignalIn { get; init; }

        /// <summary>What it hands on to.</summary>
        public required Cell SignalOut { get; init; }

        /// <summary>What feeds it with mains, by which lead.</summary>
        public required Cell MainsIn { get; init; }

        /// <summary>What it hands the mains on to.</summary>
        public required Cell MainsOut { get; init; }

        /// <summary>On the network.</summary>
        public required Cell Address { get; init; }

        /// <summary>What is set on it.</summary>
        public required Cell Settings { get; init; }

        /// <summary>Its upper edge in the side view, mm.</summary>
        public double Top { get; init; }

        /// <summary>Its lower edge in the side view, mm.</summary>
        public double Bottom { get; init; }
    }

    /// <summary>One pick.</summary>
    public sealed record Pick(Cell Name)
    {
        /// <summary>The hole of the frame.</summary>
        public required Cell Hole { get; init; }

        /// <summary>Point, bridle or truss.</summary>
        public required Cell Point { get; init; }

        /// <summary>The kind of hoist, and where its body is.</summary>
        public required Cell Hoist { get; init; }

        /// <summary>Of the hole above the floor.</summary>
        public required Cell Height { get; init; }

        /// <summary>Level, what a cell should read.</summary>
        public required Cell Level { get; init; }

        /// <summary>The same in kN.</summary>
        public required Cell LevelWeight { get; init; }

        /// <summary>In per cent of all that hangs.</summary>
        public required Cell Part { get; init; }

        /// <summary>On the hoist, moving.</summary>
        public required Cell Hook { get; init; }

        /// <summary>What it may bear.</summary>
        public required Cell Rating { get; init; }

        /// <summary>In per cent of that.</summary>
        public required Cell Share { get; init; }

        /// <summary>Chain off plumb, degrees.</summary>
        public required Cell OffPlumb { get; init; }

        /// <summary>Slings, steels, shackles, and control group.</summary>
        public required string Notes { get; init; }
    }
}
