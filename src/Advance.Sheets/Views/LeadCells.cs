using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Wording;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Says what is plugged into a thing and what it hands on: where from or where to, by which lead, how long.</summary>
/// <param name="plan">Where links and leads are found.</param>
/// <param name="speech">The units.</param>
/// <param name="said">Shorter names of things that the sheet itself shows, by their names; null for none.</param>
internal sealed class LeadCells(Plan plan, Speech speech, IReadOnlyDictionary<string, string>? said = null)
{
    /// <summary>What mains links carry.</summary>
    public const string Mains = "mains";


    // A number and its unit stay on one line.
    private const char HardSpace = '\u00A0';

    private readonly Dictionary<Address, PowerLoad> loads = plan.Power.Circuits
        .SelectMany(circuit => circuit.Chain.Loads)
        .DistinctBy(load => load.Address)
        .ToDictionary(load => load.Address);

    /// <summary>What feeds it: <c>SB1 out 15 · DRIVE-1, 2 m</c>; blank where nothing does.</summary>
    public Cell From(Link? link) => link is null ? Cell.Blank : Said(End(link.From.Port), link);

    /// <summary>What it feeds: <c>Main SR 2</c>; blank where nothing. The lead is said where it goes in.</summary>
    public Cell To(IEnumerable<Link> links) => Cell.Of(string.Join(", ", links.Select(link => Name(link.To.Port.Device))));

    /// <summary>Label and length of the lead: <c>DRIVE-1, 2 m</c>; blank where there is none.</summary>
    public Cell Lead(Link? link) => link is null ? Cell.Blank : Cell.Of(Words(link));

    /// <summary>The mains that come in at the inlet of a piece; blank where it draws none.</summary>
    public Cell MainsIn(Address piece) => From(Into(piece));

    /// <summary>What the mains go on to from a piece; blank where nowhere.</summary>
    public Cell MainsOut(Address piece) => loads.TryGetValue(piece, out var load)
        ? To(plan.Links.Where(link => link.Carries == Mains && link.From.Port.Kind == PortKind.Link && link.From.Port.Device == load.Name))
        : Cell.Blank;

    /// <summary>The circuit that a piece hangs on, and the how-manyth of its chain it is; null where it hangs on none.</summary>
    public (Circuit Circuit, int Place)? CircuitOf(Address piece)
    {
        foreach (var circuit in plan.Power.Circuits)
        {
            var place = circuit.Chain.Loads.ToList().FindIndex(load => load.Address == piece);
            if (place >= 0)
            {
                return (circuit, place + 1);
            }
        }

        return null;
    }

    private Link? Into(Address piece) => loads.TryGetValue(piece, out var load)
        ? plan.Links.FirstOrDefault(link => link.Carries == Mains && link.To.Port.Device == load.Name)
        : null;

    private string End(Port port) => said?.ContainsKey(port.Device) == true ? Name(port.Device) : port.ToString();

    private string Name(string device) => said?.GetValueOrDefault(device) ?? device;

    private Cell Said(string end, Link link) => Cell.Of(Words(link) is { Length: > 0 } lead ? $"{end} · {lead}" : end);

    private string Words(Link link) => plan.Cables.Of(link.Address) switch
    {
        { MadeUp.Value: { } length } run => $"{run.Label}, {speech.Say(length).Replace(' ', HardSpace)}",
        { } run => $"{run.Label}, no lead",
        null => "",
    };
}
