namespace Advance.Sheets.Views;

/// <summary>One generator: what it is, what is asked of it, in which order it is loaded, and what it burns.</summary>
/// <param name="Id">Of the sheet.</param>
/// <param name="Title">Of the sheet; with its service where there are several.</param>
/// <param name="Set">What its hirer has told.</param>
/// <param name="Earth">Earth, link, electrode, residual devices, who isolates.</param>
/// <param name="Asked">What is asked of it.</param>
/// <param name="Findings">What rules say about it.</param>
/// <param name="Legs">Each leg.</param>
/// <param name="Steps">Each device, in the order of switching on.</param>
/// <param name="Hours">Its hours; empty where nobody has written when the show states are.</param>
/// <param name="Fuel">Fuel of all hours together.</param>
/// <param name="Sum">What is assumed, in words.</param>
/// <param name="RestsOn">The open questions that may move loads from one device to another.</param>
public sealed record GeneratorView(
    string Id,
    string Title,
    IReadOnlyList<PairView> Set,
    IReadOnlyList<PairView> Earth,
    IReadOnlyList<PairView> Asked,
    IReadOnlyList<FindingView> Findings,
    IReadOnlyList<GeneratorView.Leg> Legs,
    IReadOnlyList<GeneratorView.Step> Steps,
    IReadOnlyList<GeneratorView.Hour> Hours,
    IReadOnlyList<PairView> Fuel,
    string Sum,
    Cell RestsOn)
{
    /// <summary>Whether it has several legs.</summary>
    public bool HasLegs => Legs.Count > 1;

    /// <summary>A leg.</summary>
    /// <param name="Name"><c>L1</c>.</param>
    /// <param name="InUse">In A.</param>
    /// <param name="State">The show state in which that is.</param>
    /// <param name="AtMost">In A.</param>
    public sealed record Leg(Cell Name, Cell InUse, Cell State, Cell AtMost);

    /// <summary>A device that is closed.</summary>
    /// <param name="Number">Where in the order.</param>
    /// <param name="Device">Which.</param>
    /// <param name="Feeds">What comes on.</param>
    /// <param name="Load">In kVA.</param>
    /// <param name="Share">Of the rating, in per cent.</param>
    /// <param name="Inrush">Peak, in A.</param>
    public sealed record Step(Cell Number, Cell Device, Cell Feeds, Cell Load, Cell Share, Cell Inrush);

    /// <summary>A time of the day.</summary>
    /// <param name="State">The show state.</param>
    /// <param name="When">From when to when.</param>
    /// <param name="Time">In hours.</param>
    /// <param name="Real">In kW.</param>
    /// <param name="Share">Of the engine, in per cent.</param>
    /// <param name="Sure">The same of our own loads alone.</param>
    /// <param name="AnHour">Fuel, litres an hour.</param>
    /// <param name="Burnt">Fuel, litres.</param>
    public sealed record Hour(Cell State, Cell When, Cell Time, Cell Real, Cell Share, Cell Sure, Cell AnHour, Cell Burnt);
}
