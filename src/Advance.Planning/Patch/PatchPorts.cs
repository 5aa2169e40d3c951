using Advance.Domain.Facts;
using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>Chooses a port for every line and every mix of a gig.</summary>
/// <param name="boxes">Where ports are.</param>
/// <param name="ground">Where boxes stand.</param>
/// <param name="routes">How far it is to them.</param>
/// <param name="earlier">What was chosen for the last issue.</param>
internal sealed class PatchPorts(PatchBoxes boxes, Ground ground, Routes routes, Choices earlier)
{
    private const double DecimetresPerMetre = 10;

    /// <summary>The lines, each with its port.</summary>
    public IReadOnlyList<PatchLine> Lines(IReadOnlyList<PatchLine> lines)
    {
        var wishes = lines.GroupBy(line => (line.Act, line.Row)).Select(row => InputWish([.. row])).ToList();
        var ports = PortChoice.Of(wishes, boxes.Field(PortKind.Input, wishes.Select(wish => wish.Fixed).OfType<PortRange>()));
        return [.. lines.Select(line => line with { Port = ports.GetValueOrDefault(line.Address), Why = Why(line.Row.Port, ports.GetValueOrDefault(line.Address), line.Channel - line.Row.Channels.First) })];
    }

    /// <summary>The mixes, each with its port.</summary>
    public IReadOnlyList<PatchReturn> Returns(IReadOnlyList<PatchReturn> mixes)
    {
        var wishes = mixes.GroupBy(mix => (mix.Act, mix.Row)).Select(row => OutputWish([.. row])).ToList();
        var ports = PortChoice.Of(wishes, boxes.Field(PortKind.Output, wishes.Select(wish => wish.Fixed).OfType<PortRange>()));
        return [.. mixes.Select(mix => mix with { Port = ports.GetValueOrDefault(mix.Address), Why = Why(mix.Row.Port, ports.GetValueOrDefault(mix.Address), mix.Half) })];
    }

    private static Reason Why(Given<PortRange>? written, Port? port, int index) =>
        written is { } given && given.Is(out var range) && port?.IsIn(range, index) == true ? new Reason.Fixed(given.At) : Reason.Derived.It;

    private static PortRange? Fixed(Given<PortRange>? written) => written is { } given && given.Is(out var range) ? range : null;

    private PortWish InputWish(IReadOnlyList<PatchLine> row) => new()
    {
        Lines = [.. row.Select(line => Line(line.Address))],
        First = row[0].Channel,
        Act = row[0].Act,
        Fixed = Fixed(row[0].Row.Port),
        Source = row[0].Row.Source.ToUpperInvariant(),
        NeedsBalanced = row.Any(line => line.Phantom.Value == true),
        Leads = Leads(row[0].Spot),
    };

    private PortWish OutputWish(IReadOnlyList<PatchReturn> row) => new()
    {
        Lines = [.. row.Select(mix => Line(mix.Address))],
        First = row[0].Number,
        Act = row[0].Act,
        Fixed = Fixed(row[0].Row.Port),
        Source = row[0].Row.For.ToUpperInvariant(),
        Leads = Leads(row[0].Spot),
    };

    private PortLine Line(Address address) => new(address, earlier.Of(address) is { } written ? Port.Read(written) : null);

    private Dictionary<string, int> Leads(Spot? spot)
    {
        var leads = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var box in boxes.All)
        {
            if (spot is { } from && ground.Find(box.Device.Place) is { } to)
            {
                leads[box.Device.Name] = (int)Math.Round(routes.Path(from, to).Meters * DecimetresPerMetre, MidpointRounding.AwayFromZero);
            }
        }

        return leads;
    }
}
