using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary>
/// Runs lighting control from the desk through the fixtures, a line for each universe. A universe with more units than are planned for a
/// line, or with fixtures that hand nothing on, is split, if the stock has something to split it with.
/// </summary>
internal sealed class ControlLines(Gig gig, Stock stock, Policies policies, LightingPlacement placed, Pieces pieces)
{
    private const string Terminator = "terminator";

    private readonly Figure<int> planned = Figure.Policy("control-units", policies.ControlUnits);

    /// <summary>The lines of all universes in use, in order.</summary>
    public IReadOnlyList<ControlLine> Of(IReadOnlyList<FixturePlan> fixtures) =>
    [
        .. fixtures.Where(fixture => fixture is { At: not null, IsWired: true })
            .GroupBy(fixture => fixture.At!.Value.Universe)
            .OrderBy(universe => universe.Key)
            .SelectMany(universe => Of(universe.Key, LineOrder.Of(universe, placed.Desk))),
    ];

    /// <summary>The links of a line, from its source to its last fixture.</summary>
    public IEnumerable<Link> Links(ControlLine line)
    {
        var from = Source(line);
        foreach (var fixture in line.Fixtures)
        {
            if (from is not null)
            {
                yield return Make(fixture.Address, from, new LinkEnd(new Port(fixture.Name, PortKind.Input, Number: null), fixture.Input!, fixture.LeadSpot, fixture.Height), fixture.RestsOn, fixture.Row.At);
            }

            from = fixture.Link is { } link ? new LinkEnd(new Port(fixture.Name, PortKind.Link, Number: null), link, fixture.LeadSpot, fixture.Height) : null;
        }
    }

    /// <summary>The link from the desk to a splitter; none where there is no desk.</summary>
    public IEnumerable<Link> Feed(ControlLine line)
    {
        if (line is { Splitter: { } splitter, Output: 1 } && DeskEnd(line.Universe) is { } desk)
        {
            var end = new LinkEnd(new Port(splitter.Name, PortKind.Input, Number: null), Connector(splitter.Kind, PortKind.Input, 1), splitter.Spot);
            yield return Make(splitter.Address, desk, end, line.Fixtures[0].RestsOn, line.Fixtures[0].Row.At);
        }
    }

    private IEnumerable<ControlLine> Of(int universe, IReadOnlyList<FixturePlan> order)
    {
        var address = pieces.At("line") / universe;
        var parts = Parts(order);
        var splitter = parts.Count > 1 && FindSplitter() is { } kind
            ? pieces.Ask(address / "splitter", $"Control splitter {universe}", kind.Id, from: null, order[0].Spot, order[0].Row.At)
            : null;
        if (splitter is null)
        {
            return [Line(address, universe, order, splitter: null, output: 0)];
        }

        // More lines than the splitter has outputs: the last one takes what is left over, and the rules say so.
        var outputs = Math.Min(parts.Count, Rows(splitter.Kind, PortKind.Output).Sum(row => row.Count));
        return Enumerable.Range(1, outputs)
            .Select(output => Line(address / "out" / output, universe, output < outputs ? parts[output - 1] : [.. parts.Skip(output - 1).SelectMany(part => part)], splitter, output));
    }

    private ControlLine Line(Address address, int universe, IReadOnlyList<FixturePlan> fixtures, Piece? splitter, int output)
    {
        Terminate(address, fixtures[^1]);
        var units = Sum.Of("unit loads on the line", "u = Σ uᵢ", AnsiE111.UnitLoads)
            .PutAll("uᵢ", fixtures.Select(fixture => Figure.Count(1) with { RestsOn = Doubts.Of(fixture.Row.Item.Doubt) }))
            .Gives(terms => terms.Values.Sum());
        return new ControlLine(address, universe, fixtures, splitter, output, units, planned, Figure.Count(LightingControl.UnitLoadsOnLine));
    }

    // A position stays on one line where it can; what hands nothing on ends a line.
    private List<IReadOnlyList<FixturePlan>> Parts(IReadOnlyList<FixturePlan> order)
    {
        var parts = new List<List<FixturePlan>> { new() };
        foreach (var position in order.GroupBy(fixture => (fixture.Row.Position, HandsOn: fixture.Link is not null)).Select(group => group.ToList()))
        {
            if (parts[^1].Count > 0 && parts[^1].Count + position.Count > policies.ControlUnits)
            {
                parts.Add([]);
            }

            foreach (var fixture in position)
            {
                if (parts[^1].Count >= policies.ControlUnits || (parts[^1].Count > 0 && parts[^1][^1].Link is null))
                {
                    parts.Add([]);
                }

                parts[^1].Add(fixture);
            }
        }

        return [.. parts];
    }

    // At the far end, on the connector that would hand the line on.
    private void Terminate(Address line, FixturePlan last)
    {
        if (last.Link is not { } connector)
        {
            return;
        }

        var kind = stock.Kinds.Values
            .Where(kind => kind.Role == Role.Terminator && Fits(kind, connector))
            .MinBy(kind => kind.Id, StringComparer.Ordinal);
        pieces.Ask(line / Terminator, $"Terminator, {last.Name}", kind?.Id ?? Terminator, from: null, last.Spot, last.Row.At);
    }

    private static bool Fits(Kind terminator, string connector) =>
        terminator.Ports.Count == 0 || Rows(terminator, PortKind.Input).Any(row => row.Connector == connector);

    private Kind? FindSplitter() => stock.Kinds.Values
        .Where(kind => kind.Role == Role.Other && Rows(kind, PortKind.Input).Sum(row => row.Count) == 1 && Rows(kind, PortKind.Output).Sum(row => row.Count) > 1)
        .MinBy(kind => kind.Id, StringComparer.Ordinal);

    private LinkEnd? Source(ControlLine line) => line.Splitter is { } splitter
        ? new LinkEnd(new Port(splitter.Name, PortKind.Output, line.Output), Connector(splitter.Kind, PortKind.Output, line.Output), splitter.Spot)
        : DeskEnd(line.Universe);

    private LinkEnd? DeskEnd(int universe) => gig.Lighting.Control is { } desk
        ? new LinkEnd(new Port(desk.Name, PortKind.Output, universe), Connector(desk.Item.Is(out var id) ? stock.Find(id) : null, PortKind.Output, universe), placed.Desk)
        : null;

    private static string Connector(Kind? kind, PortKind which, int number)
    {
        foreach (var row in Rows(kind, which))
        {
            if (number <= row.Count)
            {
                return row.Connector;
            }

            number -= row.Count;
        }

        return "";
    }

    private static IEnumerable<PortRow> Rows(Kind? kind, PortKind which) => kind?.Ports.Where(row => row.Port == which && row.Signal == FixturePlan.Signal) ?? [];

    private static Link Make(Address address, LinkEnd from, LinkEnd to, Doubts restsOn, Mark at) =>
        new(Address.Of("link") / address.Text, from, to, FixturePlan.Signal, restsOn, at);
}
