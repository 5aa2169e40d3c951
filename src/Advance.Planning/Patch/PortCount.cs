using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>Counts how full stage boxes are.</summary>
internal static class PortCount
{
    /// <summary>Inputs and outputs of one box, when the fullest act plays.</summary>
    /// <param name="box">The box.</param>
    /// <param name="lines">All lines.</param>
    /// <param name="returns">All mixes.</param>
    /// <param name="boxes">All boxes, which know what other devices hang on.</param>
    /// <param name="policies">What is to stay free.</param>
    /// <param name="restsOn">The open questions that the choice of ports rests on.</param>
    public static IEnumerable<BoxUse> Uses(
        PortBox box, IReadOnlyList<PatchLine> lines, IReadOnlyList<PatchReturn> returns, PatchBoxes boxes, Policies policies, Doubts restsOn)
    {
        var name = box.Device.Name;
        var used = Fullest(lines.Select(line => (line.Act, line.Port)), name) + Reserved(boxes, PortKind.Input, name);
        var usedOut = Fullest(returns.Select(mix => ((string?)mix.Act, mix.Port)), name) + Reserved(boxes, PortKind.Output, name);
        yield return Use(name, PortKind.Input, "in", Count(used, restsOn), box.Inputs, policies.FreePorts);
        yield return Use(name, PortKind.Output, "out", Count(usedOut, restsOn), box.Outputs, policies.FreePorts);
    }

    /// <summary>The ports of all boxes together.</summary>
    public static Figure<int> All(IEnumerable<Figure<int>> ports) =>
        Sum.Of("ports", "n = Σ nᵢ", Publication.Arithmetic).PutAll("nᵢ", ports).Gives(terms => terms.Values.Sum());

    private static BoxUse Use(string box, PortKind kind, string word, Figure<int> used, Figure<int> ports, Share free)
    {
        var wanted = Sum.Of("ports kept free", "f = max(m, ⌈p · n / 100⌉), or 0 where n = 0", Publication.CommonPractice)
            .Put("m", Figure.Policy("free-ports", free.AtLeast))
            .Put("p", Figure.Policy("free-ports", free.Percent))
            .Put("n", ports)
            .Gives(Handbook.Spares.Of);
        return new BoxUse(Address.Of("patch") / box / word, box, kind, used, ports, wanted);
    }

    private static Figure<int> Count(int used, Doubts restsOn) => Figure.Count(used) with { RestsOn = restsOn };

    private static int Reserved(PatchBoxes boxes, PortKind kind, string box) => boxes.Reserved(kind).Count(port => port.Device == box);

    // Lines that are up for every act count beside each of them.
    private static int Fullest(IEnumerable<(string? Act, Port? Port)> patched, string box)
    {
        var byAct = patched.Where(line => line.Port?.Device == box).ToLookup(line => line.Act ?? "");
        return byAct[""].Count() + byAct.Where(act => act.Key.Length > 0).Select(act => act.Count()).DefaultIfEmpty().Max();
    }
}
