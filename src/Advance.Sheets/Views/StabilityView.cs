namespace Advance.Sheets.Views;

/// <summary>What stands, what tips it, and at which gust it comes down.</summary>
/// <param name="Site">Wind and ground.</param>
/// <param name="IsInWind">Whether wind gets at it.</param>
/// <param name="Findings">What rules say about it.</param>
/// <param name="Acts">At which gust what is done, the least first; empty out of the wind.</param>
/// <param name="Items">Each thing that stands, the weakest first.</param>
public sealed record StabilityView(
    IReadOnlyList<PairView> Site,
    bool IsInWind,
    IReadOnlyList<FindingView> Findings,
    IReadOnlyList<StabilityView.Level> Acts,
    IReadOnlyList<StabilityView.Item> Items)
{
    /// <summary>The least gust at which something is to be made ready; blank where nothing is known.</summary>
    public Cell FirstReady { get; init; } = Cell.Blank;

    /// <summary>The least gust at which something is lowered or cleared; blank where nothing is known.</summary>
    public Cell FirstAct { get; init; } = Cell.Blank;

    /// <summary>Of weights.</summary>
    public string MassUnit { get; init; } = "";

    /// <summary>Of lengths.</summary>
    public string LengthUnit { get; init; } = "";

    /// <summary>Of gusts.</summary>
    public string WindUnit { get; init; } = "";

    /// <summary>Of areas.</summary>
    public string AreaUnit { get; init; } = "";

    /// <summary>The ratio that the company asks for.</summary>
    public Cell Asked { get; init; } = Cell.Blank;

    /// <summary>Whether ballast is written for something.</summary>
    public bool HasBallast { get; init; }

    /// <summary>At which gust something is acted on.</summary>
    /// <param name="Name">What.</param>
    /// <param name="Prepare">Make ready.</param>
    /// <param name="Act">Lower or clear.</param>
    /// <param name="Limit">What it stands.</param>
    /// <param name="From">What that comes from.</param>
    /// <param name="Forecast">The mean of a forecast in which that gust is to be reckoned with.</param>
    /// <param name="Takes">Minutes to lower it, where they are written.</param>
    /// <param name="By">Who does it, where that is written.</param>
    public sealed record Level(Cell Name, Cell Prepare, Cell Act, Cell Limit, Cell From, Cell Forecast, Cell Takes, Cell By);

    /// <summary>A thing that stands.</summary>
    /// <param name="Name">On paper; both of a pair where they are alike.</param>
    /// <param name="Drawn">The name by which its feet are drawn.</param>
    /// <param name="IsDrawn">Whether its feet can be drawn.</param>
    /// <param name="Facts">Weight, centre of gravity, ground, ballast, joints.</param>
    /// <param name="Parts">What it is made of.</param>
    /// <param name="Edges">Each edge of its feet, and the worst of what stands loose on its boxes.</param>
    /// <param name="Assumed">What is assumed of it, in words; empty for nothing.</param>
    public sealed record Item(string Name, string Drawn, bool IsDrawn, IReadOnlyList<PairView> Facts, IReadOnlyList<Part> Parts, IReadOnlyList<Edge> Edges, string Assumed);

    /// <summary>A part of it.</summary>
    /// <param name="Name">What; several alike in one.</param>
    /// <param name="Holds">Weight that counts as holding, of each.</param>
    /// <param name="Known">How its weight is known.</param>
    /// <param name="Up">How high the centre of gravity of each is.</param>
    /// <param name="Front">What the wind finds of each from the front, m².</param>
    /// <param name="Side">What the wind finds of each from the side, m².</param>
    /// <param name="Coefficient">The force coefficient in that.</param>
    /// <param name="Source">Where that stands.</param>
    public sealed record Part(Cell Name, Cell Holds, Cell Known, Cell Up, Cell Front, Cell Side, Cell Coefficient, Cell Source);

    /// <summary>An edge of its feet.</summary>
    /// <param name="Name">Which.</param>
    /// <param name="Inside">How far inside it the weight is.</param>
    /// <param name="Angle">At which it tips, degrees.</param>
    /// <param name="Slope">How much the ground falls to it, degrees.</param>
    /// <param name="From">Where the wind comes from that tips it most.</param>
    /// <param name="Tipping">Ratio.</param>
    /// <param name="Sliding">Ratio.</param>
    /// <param name="Tips">Gust with the ratio asked for.</param>
    /// <param name="Slides">Gust with the ratio asked for.</param>
    public sealed record Edge(Cell Name, Cell Inside, Cell Angle, Cell Slope, Cell From, Cell Tipping, Cell Sliding, Cell Tips, Cell Slides);
}
