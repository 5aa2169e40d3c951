using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Connects sources to ports, and ports to what is heard with.</summary>
internal sealed class PatchLinks(PatchBoxes boxes, Ground ground, Stock stock)
{
    private const string Root = "link";

    /// <summary>The link of a line; none where it has no port.</summary>
    public IEnumerable<Link> Of(PatchLine line)
    {
        if (line.Port is { } port)
        {
            var source = new LinkEnd(new Port(line.Source, PortKind.Output, Number: null), MicLine.OutputOf(line.Device?.Kind, stock), line.Spot);
            yield return Make(line.Address, source, At(port), line.RestsOn, line.Row.At) with { Act = line.Act };
        }
    }

    /// <summary>The links of a mix, or of half a stereo one: to the first wedge, and on from wedge to wedge as far as they hand on.</summary>
    public IEnumerable<Link> Of(PatchReturn mix)
    {
        var chain = MonitorChain.Of(mix);
        if (mix.Port is not { } port || (chain.Pieces.Count > 0 && chain.Fed == 0))
        {
            yield break;
        }

        yield return Make(mix.Address, At(port), First(mix, chain), mix.RestsOn, mix.Row.At) with { Act = mix.Act };
        for (var next = 1; next < chain.Fed; next++)
        {
            var (from, to) = (chain.Pieces[next - 1], chain.Pieces[next]);
            var source = new LinkEnd(new Port(from.Name, PortKind.Link, Number: null), Known(MicLine.LinkOf(from.Kind)), from.Spot);
            var target = new LinkEnd(new Port(to.Name, PortKind.Input, Number: null), Known(MicLine.InputsOf(to.Kind)?.Connector), to.Spot);
            yield return Make(to.Address, source, target, mix.RestsOn, mix.Row.At) with { Act = mix.Act };
        }
    }

    private static LinkEnd First(PatchReturn mix, MonitorChain chain) => chain.Pieces.Count == 0
        ? new LinkEnd(new Port(mix.Row.For, PortKind.Input, chain.Input), MicLine.Connector, mix.Spot)
        : new LinkEnd(new Port(chain.Pieces[0].Name, PortKind.Input, chain.Input), Known(MicLine.InputsOf(chain.Pieces[0].Kind)?.Connector), mix.Spot);

    // What nobody wrote down is the usual one.
    private static string Known(string? connector) => connector is { Length: > 0 } ? connector : MicLine.Connector;

    private static Link Make(Address address, LinkEnd from, LinkEnd to, Doubts restsOn, Mark at) =>
        new(Address.Of(Root) / address.Text, from, to, BoxPort.Balanced, restsOn, at);

    private LinkEnd At(Port port) => new(port, boxes.Connector(port), ground.Find(boxes.Find(port.Device)?.Device.Place));
}
