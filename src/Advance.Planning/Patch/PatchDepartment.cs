using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Gives every line and every mix its port, and connects them.</summary>
public static class PatchDepartment
{
    private const string Name = "patch";

    /// <summary>Places what the lines and the mixes take; which ports they have makes no difference to that.</summary>
    public static PatchPlacement Place(Gig gig, Stock stock, Ground ground)
    {
        var pieces = new Pieces(Name, stock);
        var kit = new PatchKit(pieces, ground, stock);
        List<PatchLine> lines = [.. gig.Acts.SelectMany(act => kit.Lines(act.Inputs, act.Name)), .. kit.Lines(gig.Sound.AlwaysLive, act: null)];
        return new PatchPlacement(lines, [.. gig.Acts.SelectMany(kit.Returns)], pieces.Made);
    }

    /// <summary>Chooses ports. A line keeps the port it had in the earlier issue where it can.</summary>
    public static PatchPlan Choose(
        Gig gig, Stock stock, Policies policies, SoundPlan sound, PatchPlacement placed, Ground ground, Routes routes, Choices earlier)
    {
        var boxes = new PatchBoxes(gig, stock, sound);
        var ports = new PatchPorts(boxes, ground, routes, earlier);
        var lines = ports.Lines(placed.Lines);
        var returns = ports.Returns(placed.Returns);

        var restsOn = RestsOn(boxes, lines, returns);
        var uses = UsedBoxes(boxes, lines, returns).SelectMany(box => PortCount.Uses(box, lines, returns, boxes, policies, restsOn)).ToList();
        var desks = gig.Sound.Consoles.Select(desk => DeskCount.Of(desk, stock, lines, returns)).ToList();
        var links = new PatchLinks(boxes, ground, stock);
        return new PatchPlan(
            lines,
            returns,
            uses,
            PortCount.All(boxes.Row.Select(box => box.Inputs)),
            PortCount.All(boxes.Row.Select(box => box.Outputs)),
            placed.Pieces,
            [.. lines.SelectMany(links.Of), .. returns.SelectMany(links.Of)],
            [.. uses.SelectMany(use => use.Figures), .. PatchTotals.Of(lines, returns), .. desks.SelectMany(desk => desk.Figures)],
            new Choices(Chosen(lines, returns)))
        {
            Desks = desks,
            HasBoxes = boxes.Row.Count > 0,
            RestsOn = restsOn,
        };
    }

    // A desk beside stage boxes is counted where something was fixed to it.
    private static IEnumerable<PortBox> UsedBoxes(PatchBoxes boxes, IReadOnlyList<PatchLine> lines, IReadOnlyList<PatchReturn> returns)
    {
        var used = lines.Select(line => line.Port).Concat(returns.Select(mix => mix.Port)).OfType<Port>().Select(port => port.Device).ToHashSet(StringComparer.Ordinal);
        return boxes.All.Where(box => boxes.Row.Contains(box) || used.Contains(box.Device.Name));
    }

    // Ports fixed by hand; with several boxes also where everything stands, since the shortest leads decide.
    private static Doubts RestsOn(PatchBoxes boxes, IReadOnlyList<PatchLine> lines, IReadOnlyList<PatchReturn> returns)
    {
        var doubts = lines.Select(line => line.Row.Port?.Doubt).Concat(returns.Select(mix => mix.Row.Port?.Doubt)).Concat(boxes.Row.Select(box => box.Device.Item.Doubt));
        var places = lines.Select(line => line.Row.Place?.Doubt).Concat(returns.Select(mix => mix.Row.Place?.Doubt)).Concat(boxes.Row.Select(box => box.Device.Place?.Doubt));
        return doubts.Concat(boxes.Row.Count > 1 ? places : []).Aggregate(Doubts.None, (sum, doubt) => sum.With(Doubts.Of(doubt)));
    }

    private static IEnumerable<KeyValuePair<Address, string>> Chosen(IReadOnlyList<PatchLine> lines, IReadOnlyList<PatchReturn> returns) =>
        lines.Select(line => (line.Address, line.Port))
            .Concat(returns.Select(mix => (mix.Address, mix.Port)))
            .Where(chosen => chosen.Port is not null)
            .Select(chosen => new KeyValuePair<Address, string>(chosen.Address, chosen.Port!.ToString()));
}
