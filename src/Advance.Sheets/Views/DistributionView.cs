namespace Advance.Sheets.Views;

/// <summary>One distribution for the electrician, and for the lid of the box.</summary>
/// <param name="Id">Of the sheet.</param>
/// <param name="Name">As on the box.</param>
/// <param name="Facts">Where it stands, what feeds it, and what is known of that supply.</param>
/// <param name="Rows">Its outlets, by number, those of a strip under the outlet that feeds it.</param>
/// <param name="Totals">Legs, leakage, what is spare.</param>
/// <param name="Findings">What rules say about it and what carries it.</param>
/// <param name="Unit">Of places.</param>
/// <param name="Mark">The share of a device's rating that the company allows itself, from 0 to 1.</param>
/// <param name="HasDevices">Whether outlets have devices of their own.</param>
/// <param name="HasLegs">Whether its outlets hang on several legs, with one neutral.</param>
/// <param name="Cores">Where leads of one core each feed it, those, in the order in which they are connected; else none.</param>
/// <param name="MeetsAnother">Whether another supply is used on this stage.</param>
/// <param name="RestsOn">The open questions that may move loads to other outlets; blank where there is none.</param>
public sealed record DistributionView(
    string Id,
    string Name,
    IReadOnlyList<PairView> Facts,
    IReadOnlyList<DistributionView.Row> Rows,
    IReadOnlyList<PairView> Totals,
    IReadOnlyList<FindingView> Findings,
    string Unit,
    string Mark,
    bool HasDevices,
    bool HasLegs,
    IReadOnlyList<PairView> Cores,
    bool MeetsAnother,
    Cell RestsOn)
{
    /// <summary>What carries it and is itself spoken of, on the sheets before this one; blank where nothing is.</summary>
    public Cell Before { get; init; } = Cell.Blank;

    /// <summary>One outlet.</summary>
    /// <param name="Name">On paper: <c>PD1 outlet 3</c>.</param>
    /// <param name="IsStrip">Whether it is an outlet of a strip, which has no device of its own.</param>
    public sealed record Row(string Name, bool IsStrip)
    {
        /// <summary>Whether nothing hangs on it.</summary>
        public bool IsSpare { get; init; }

        /// <summary>Of the outlet, or of the first and the last of several spare ones.</summary>
        public Cell Number { get; init; } = Cell.Blank;

        /// <summary>The loop at its far end as worked out, or else up to how much its device opens in time.</summary>
        public Cell Loop { get; init; } = Cell.Blank;

        /// <summary>Its connector.</summary>
        public Cell Outlet { get; init; } = Cell.Blank;

        /// <summary>Its leg; blank for one alone.</summary>
        public Cell Leg { get; init; } = Cell.Blank;

        /// <summary>Its device and curve.</summary>
        public Cell Device { get; init; } = Cell.Blank;

        /// <summary>Rated residual current in mA.</summary>
        public Cell Residual { get; init; } = Cell.Blank;

        /// <summary>What hangs on it, as a name.</summary>
        public Cell Feeds { get; init; } = Cell.Blank;

        /// <summary>Unit by unit, where the name is not the only unit.</summary>
        public Cell Chain { get; init; } = Cell.Blank;

        /// <summary>Where the first unit stands.</summary>
        public Cell Where { get; init; } = Cell.Blank;

        /// <summary>Label and length.</summary>
        public Cell Lead { get; init; } = Cell.Blank;

        /// <summary>Of its conductors.</summary>
        public Cell Size { get; init; } = Cell.Blank;

        /// <summary>In A.</summary>
        public Cell InUse { get; init; } = Cell.Blank;

        /// <summary>In A.</summary>
        public Cell AtMost { get; init; } = Cell.Blank;

        /// <summary>In use, in per cent of what it may carry.</summary>
        public Cell Share { get; init; } = Cell.Blank;

        /// <summary>The same from 0 on, for the bar; empty where unknown.</summary>
        public string Used { get; init; } = "";

        /// <summary>To the last unit, in per cent.</summary>
        public Cell Drop { get; init; } = Cell.Blank;

        /// <summary>Voltage at the last unit, in V.</summary>
        public Cell AtEnd { get; init; } = Cell.Blank;

        /// <summary>In mA.</summary>
        public Cell Leakage { get; init; } = Cell.Blank;

        /// <summary>The how-manyth that is switched on.</summary>
        public Cell On { get; init; } = Cell.Blank;
    }
}
