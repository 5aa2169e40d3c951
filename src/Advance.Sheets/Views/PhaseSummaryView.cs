namespace Advance.Sheets.Views;

/// <summary>What each leg and the neutral carry wherever a supply has more than one leg.</summary>
/// <param name="Places">From the service down.</param>
/// <param name="Mark">The share of a rating that the company allows itself, from 0 to 1.</param>
/// <param name="Findings">What rules say about legs and neutrals.</param>
/// <param name="IsSinglePole">Whether any of them is fed by leads of one core each.</param>
/// <param name="Choice">How good the choice of outlets is, in words.</param>
/// <param name="RestsOn">The open questions that may move loads to other legs; blank where there are none.</param>
public sealed record PhaseSummaryView(
    IReadOnlyList<PhaseSummaryView.Place> Places, string Mark, IReadOnlyList<FindingView> Findings, bool IsSinglePole, string Choice, Cell RestsOn)
{
    /// <summary>A service, or the inlet of a distribution.</summary>
    /// <param name="Name">On paper.</param>
    /// <param name="About">Its connector, what it may carry, what feeds it.</param>
    /// <param name="Legs">Each leg.</param>
    /// <param name="Neutral">Its neutral, in words and numbers; null where it has none.</param>
    public sealed record Place(string Name, string About, IReadOnlyList<Leg> Legs, NeutralLine? Neutral);

    /// <summary>One leg.</summary>
    /// <param name="Name"><c>L1</c>.</param>
    /// <param name="InUse">In A.</param>
    /// <param name="State">The show state in which that is.</param>
    /// <param name="AtMost">In A.</param>
    /// <param name="Share">In use, in per cent of what it may carry.</param>
    /// <param name="Used">The same from 0 on, for the bar; empty where unknown.</param>
    /// <param name="Drop">What is lost up to here with everything in use, in per cent; blank at a service.</param>
    /// <param name="Alone">The same with this leg alone in use.</param>
    /// <param name="Rise">How far the leg rises at the highest while others are on; blank where it never does.</param>
    /// <param name="Lost">What it gets if the neutral opens, in V; blank where that moves nothing.</param>
    /// <param name="AtRisk">What would then be at risk.</param>
    public sealed record Leg(Cell Name, Cell InUse, Cell State, Cell AtMost, Cell Share, string Used, Cell Drop, Cell Alone, Cell Rise, Cell Lost, Cell AtRisk);

    /// <summary>The neutral.</summary>
    /// <param name="InUse">At its worst, in A.</param>
    /// <param name="State">In which show state, and with which legs on.</param>
    /// <param name="AtMost">In A.</param>
    /// <param name="Harmonics">Each order above the first, where there is one.</param>
    /// <param name="Assumed">Loads whose harmonics nobody gave.</param>
    public sealed record NeutralLine(Cell InUse, Cell State, Cell AtMost, Cell Harmonics, Cell Assumed);
}
