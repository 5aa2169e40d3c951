namespace Advance.Sheets.Views;

/// <summary>One distribution for the electrician, and for the lid of the box.</summary>
/// <param name="Id">Of the sheet.</param>
/// <param name="Name">As on the box.</param>
/// <param name="Facts">Where it stands, what feeds it, and what is known of that supply.</param>
/// <param name="Rows">Its outlets, by number.</param>
/// <param name="Totals">Legs, leakage, what is spare.</param>
/// <param name="Findings">What rules say about it and what carries it.</param>
/// <param name="Mark">The share of a device's rating that the company allows itself, from 0 to 1.</param>
/// <param name="HasDevices">Whether outlets have devices of their own; a strip has none.</param>
/// <param name="MeetsAnother">Whether another supply is used on this stage.</param>
/// <param name="RestsOn">The open questions that may move loads to other outlets; blank where there is none.</param>
public sealed record DistributionView(
    string Id,
    string Name,
    IReadOnlyList<PairView> Facts,
    IReadOnlyList<DistributionView.Row> Rows,
    IReadOnlyList<PairView> Totals,
    IReadOnlyList<FindingView> Findings,
    string Mark,
    bool HasDevices,
    bool MeetsAnother,
    Cell RestsOn)
{
    /// <summary>One outlet.</summary>
    /// <param name="Number">Of the outlet.</param>
    /// <param name="Outlet">Its connector.</param>
    /// <param name="Device">Its device and curve.</param>
    /// <param name="Residual">Rated residual current in mA.</param>
    /// <param name="Feeds">What hangs on it, as a name.</param>
    /// <param name="Chain">Unit by unit, where the name is not the only unit.</param>
    /// <param name="Where">Where the first unit stands.</param>
    /// <param name="Lead">Label and length.</param>
    /// <param name="Section">Of the thinnest conductor on the way to the first unit.</param>
    /// <param name="InUse">In A.</param>
    /// <param name="AtMost">In A.</param>
    /// <param name="Share">In use, in per cent of what it may carry.</param>
    /// <param name="Used">The same from 0 on, for the bar; empty where unknown.</param>
    /// <param name="Drop">To the last unit, in per cent.</param>
    /// <param name="AtEnd">Voltage at the last unit, in V.</param>
    /// <param name="Leakage">In mA.</param>
    /// <param name="On">The how-manyth that is switched on.</param>
    public sealed record Row(
        Cell Number,
        Cell Outlet,
        Cell Device,
        Cell Residual,
        Cell Feeds,
        Cell Chain,
        Cell Where,
        Cell Lead,
        Cell Section,
        Cell InUse,
        Cell AtMost,
        Cell Share,
        string Used,
        Cell Drop,
        Cell AtEnd,
        Cell Leakage,
        Cell On);
}
