namespace Advance.Sheets.Views;

/// <summary>What is asked of those who give the mains.</summary>
/// <param name="Services">Each that the show hangs on.</param>
/// <param name="MeetsAnother">Whether several are used on one stage.</param>
/// <param name="EarthsJoined">How the earths of several are joined, or kept from each other; blank where nobody says.</param>
public sealed record SupplyRequestView(IReadOnlyList<SupplyRequestView.Service> Services, bool MeetsAnother, Cell EarthsJoined)
{
    /// <summary>One service.</summary>
    /// <param name="Name">As the venue calls it.</param>
    /// <param name="Asked">What is asked for.</param>
    /// <param name="Told">What is known of it.</param>
    /// <param name="Hangs">What of ours hangs on it.</param>
    /// <param name="Findings">What rules say about it.</param>
    /// <param name="RestsOn">The open questions that may move loads to another service.</param>
    public sealed record Service(
        string Name,
        IReadOnlyList<PairView> Asked,
        IReadOnlyList<PairView> Told,
        IReadOnlyList<Load> Hangs,
        IReadOnlyList<FindingView> Findings,
        Cell RestsOn)
    {
        /// <summary>Whether it has several legs.</summary>
        public bool HasLegs => Hangs.Any(load => !load.Leg.IsBlank);

        /// <summary>Whether nobody has said whose rules hold.</summary>
        public required bool IsRulesAsked { get; init; }
    }

    /// <summary>A circuit of ours.</summary>
    public sealed record Load(Cell Circuit, Cell Leg, Cell Feeds, Cell InUse, Cell AtMost);
}
