namespace Advance.Sheets.Views;

/// <summary>Every fixture: where it hangs, how it is set, where it listens and what feeds it.</summary>
/// <param name="Control">The desk, and where it stands; blank where there is none.</param>
/// <param name="Positions">What carries fixtures; those that hang nowhere known come last.</param>
/// <param name="Universes">How full each is.</param>
/// <param name="Findings">What rules say about it.</param>
/// <param name="RestsOn">The open questions that may move leads and circuits.</param>
public sealed record LightingPatchView(
    Cell Control,
    IReadOnlyList<LightingPatchView.Position> Positions,
    IReadOnlyList<LightingPatchView.Universe> Universes,
    IReadOnlyList<FindingView> Findings,
    Cell RestsOn)
{
    /// <summary>What carries fixtures.</summary>
    /// <param name="Name">Its name.</param>
    /// <param name="Carrier">The stand, pipe or truss; blank where it is in the house.</param>
    /// <param name="Place">Where.</param>
    /// <param name="Trim">How high above the floor.</param>
    /// <param name="Carries">What hangs on it weighs so much.</param>
    /// <param name="Fixtures">In the order of their numbers.</param>
    public sealed record Position(Cell Name, Cell Carrier, Cell Place, Cell Trim, Cell Carries, IReadOnlyList<Fixture> Fixtures);

    /// <summary>One fixture.</summary>
    /// <param name="Number">On the desk.</param>
    /// <param name="Item">Its kind.</param>
    /// <param name="Place">Where it is.</param>
    /// <param name="Purpose">What it lights.</param>
    /// <param name="Mode">The maker's mode, with its slots.</param>
    /// <param name="UniverseNumber">Where it listens.</param>
    /// <param name="Address">Its first slot.</param>
    /// <param name="Line">Its line and its place in it.</param>
    /// <param name="Control">What control comes from, by which lead.</param>
    /// <param name="Circuit">Outlet, and its place in the chain.</param>
    /// <param name="Mains">What mains come from, by which lead.</param>
    /// <param name="Weight">Of the fixture alone.</param>
    public sealed record Fixture(
        Cell Number,
        Cell Item,
        Cell Place,
        Cell Purpose,
        Cell Mode,
        Cell UniverseNumber,
        Cell Address,
        Cell Line,
        Cell Control,
        Cell Circuit,
        Cell Mains,
        Cell Weight);

    /// <summary>One universe.</summary>
    /// <param name="Number">From 1.</param>
    /// <param name="Used">Slots that fixtures listen to.</param>
    /// <param name="Free">Slots left of 512.</param>
    /// <param name="KeptFree">Slots that policy wants left.</param>
    /// <param name="Lines">Its lines, with fixtures and unit loads.</param>
    public sealed record Universe(Cell Number, Cell Used, Cell Free, Cell KeptFree, Cell Lines);
}
