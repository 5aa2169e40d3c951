using Advance.Domain.Figures;
using Advance.Domain.Wording;
using Advance.Planning;

namespace Advance.Sheets.Drawings;

/// <summary>
/// Who gives a signal to whom, from the sources to the loudspeakers. A stage box is two nodes, on the way to the desk and on the way back;
/// what an act plays into a box, and what it hears from one, is one node each; so is a stack.
/// </summary>
internal sealed class SignalGraph
{
    private const string Network = "network";

    private readonly Plan plan;
    private readonly Speech speech;
    private readonly List<SignalNode> nodes = [];
    private readonly List<SignalEdge> edges = [];

    private SignalGraph(Plan plan)
    {
        this.plan = plan;
        speech = Speech.Of(plan.Brief.Company.Units);
    }

    /// <summary>In the order in which they were met.</summary>
    public IReadOnlyList<SignalNode> Nodes => nodes;

    /// <summary>In the order in which they were met.</summary>
    public IReadOnlyList<SignalEdge> Edges => edges;

    /// <summary>That of a plan; without nodes where nothing sounds.</summary>
    public static SignalGraph Of(Plan plan)
    {
        var graph = new SignalGraph(plan);
        graph.AddSources();
        graph.AddDevices();
        graph.AddStacks();
        graph.AddMixes();
        graph.AddTrunks();
        return graph;
    }

    /// <summary>The edges of a part; nodes without one are left out when it is set.</summary>
    public (IReadOnlyList<SignalNode> Nodes, IReadOnlyList<SignalEdge> Edges) Part(SignalPart part)
    {
        var toDesk = Reaching(plan.Sound.Devices.Where(device => device.Role == SoundRole.Console).Select(device => device.Name), edges);
        List<SignalEdge> after = [.. edges.Where(edge => !toDesk.Contains(edge.To))];
        var loud = Reaching(plan.Sound.Piles.Select(stack => stack.Address.Text), after);
        return part switch
        {
            SignalPart.ToDesk => (nodes, [.. edges.Where(edge => toDesk.Contains(edge.To))]),
            SignalPart.FromDesk => (nodes, after),
            SignalPart.Loudspeakers => (nodes, [.. after.Where(edge => loud.Contains(edge.To))]),
            SignalPart.Heard => (nodes, WithWaysTo(after, [.. after.Where(edge => !loud.Contains(edge.To))])),
            _ => (nodes, edges),
        };
    }

    // What feeds them stands on both parts.
    private static List<SignalEdge> WithWaysTo(List<SignalEdge> all, List<SignalEdge> wanted)
    {
        var needed = Reaching(wanted.Select(edge => edge.From), all);
        return [.. all.Where(edge => wanted.Contains(edge) || needed.Contains(edge.To))];
    }

    private static HashSet<string> Reaching(IEnumerable<string> ends, List<SignalEdge> among)
    {
        var reaching = ends.ToHashSet(StringComparer.Ordinal);
        while (among.Exists(edge => reaching.Contains(edge.To) && reaching.Add(edge.From)))
        {
            // Each round takes in one node more.
        }

        return reaching;
    }

    private void AddSources()
    {
        foreach (var group in plan.Patch.Lines.Where(line => line.Port is not null).GroupBy(line => (line.Act, line.Port!.Device)))
        {
            var id = $"sources/{group.Key.Act}/{group.Key.Device}";
            var title = group.Key.Act ?? (plan.Brief.Gig.Acts.Count > 0 ? "Every act" : "Sources");
            var channels = ChannelWords.Of(group.Select(line => line.Channel));
            nodes.Add(new SignalNode(id, title, [group.Count() == 1 ? "1 line" : $"{group.Count()} lines", $"channels {channels}"]));
            var ports = ChannelWords.Of(group.Select(line => line.Port!.Number ?? 0));
            edges.Add(new SignalEdge(id, In(group.Key.Device), [$"in {ports}", .. Leads(group.Select(line => Address.Of("link") / line.Address.Text))]));
        }
    }

    private void AddDevices()
    {
        foreach (var device in plan.Sound.Devices)
        {
            if (device.Role == SoundRole.StageBox)
            {
                nodes.Add(new SignalNode(In(device.Name), $"{device.Name} inputs", [device.Piece.Item]));
                nodes.Add(new SignalNode(Out(device.Name), $"{device.Name} outputs", [device.Piece.Item]));
            }
            else
            {
                nodes.Add(new SignalNode(device.Name, device.Name, [device.Piece.Item]));
            }
        }

        var between = plan.Links.Where(link => link.Carries is not (Network or "mains") && IsDevice(link.From.Port.Device) && IsDevice(link.To.Port.Device));
        AddParallel(between, link => Out(link.From.Port.Device), link => In(link.To.Port.Device));
    }

    private void AddStacks()
    {
        foreach (var stack in plan.Sound.Piles)
        {
            var boxes = plan.Drive.Boxes.Where(box => box.Stack.Address == stack.Address).ToList();
            nodes.Add(new SignalNode(stack.Address.Text, stack.Name, [.. boxes.AsEnumerable().Reverse().SelectMany(box => LinesOf(box, stack))]));
            var fed = boxes.Select(box => box.In).OfType<Link>().Where(link => IsDevice(link.From.Port.Device));
            AddParallel(fed, link => Out(link.From.Port.Device), _ => stack.Address.Text);
        }
    }

    private IEnumerable<string> LinesOf(DrivenBox box, StackPlan stack)
    {
        var before = box.In is { } link ? stack.Boxes.FirstOrDefault(other => other.Piece.Name == link.From.Port.Device) : null;
        yield return $"{box.Box.Position} {box.Box.Piece.Item}{(before is null ? "" : $" from {before.Position} by")}";
        if (before is not null)
        {
            yield return Lead(box.In!);
        }
    }

    private void AddMixes()
    {
        foreach (var group in plan.Patch.Returns.Where(mix => mix.Port is not null).GroupBy(mix => (mix.Act, mix.Port!.Device)))
        {
            var id = $"mixes/{group.Key.Act}/{group.Key.Device}";
            nodes.Add(new SignalNode(id, $"{group.Key.Act}, mixes", [.. group.GroupBy(mix => mix.Row).SelectMany(MixLines)]));
            edges.Add(new SignalEdge(Out(group.Key.Device), id, [$"out {ChannelWords.Of(group.Select(mix => mix.Port!.Number ?? 0))}"]));
        }
    }

    private IEnumerable<string> MixLines(IGrouping<Domain.Gigs.MixRow, PatchReturn> mix)
    {
        var with = mix.Key.With is { } given && given.Is(out var item) ? $", {(item.Count > 1 ? $"{item.Count} × " : "")}{item.Item}" : "";
        yield return $"{mix.Key.Numbers} {mix.Key.For}{with}";
        foreach (var lead in Leads(mix.Select(half => Address.Of("link") / half.Address.Text)))
        {
            yield return lead;
        }
    }

    // A stage box and its desk, or two desks: there and back on one lead.
    private void AddTrunks()
    {
        foreach (var box in plan.Sound.Devices.Where(device => device.Role == SoundRole.StageBox))
        {
            var trunk = plan.Links.FirstOrDefault(link => link.Carries == Network && (link.From.Port.Device == box.Name || link.To.Port.Device == box.Name));
            var desk = trunk is null ? null : trunk.From.Port.Device == box.Name ? trunk.To.Port.Device : trunk.From.Port.Device;
            if (desk is null || !plan.Sound.Devices.Any(device => device.Name == desk && device.Role == SoundRole.Console))
            {
                continue;
            }

            edges.Add(new SignalEdge(In(box.Name), desk, ["network", .. Leads([trunk!.Address])]));
            edges.Add(new SignalEdge(desk, Out(box.Name), ["same lead back"]));
        }
    }

    private void AddParallel(IEnumerable<Link> links, Func<Link, string> from, Func<Link, string> to)
    {
        foreach (var group in links.GroupBy(link => (From: from(link), To: to(link))))
        {
            var outs = ChannelWords.Of(group.Select(link => link.From.Port.Number).OfType<int>());
            var ins = ChannelWords.Of(group.Select(link => link.To.Port.Number).OfType<int>());
            edges.Add(new SignalEdge(group.Key.From, group.Key.To, [$"out {outs}{(ins.Length > 0 ? $" to {ins}" : "")}", .. Leads(group.Select(link => link.Address))]));
        }
    }

    private bool IsDevice(string name) => plan.Sound.Devices.Any(device => device.Name == name);

    private bool IsBox(string name) => plan.Sound.Devices.Any(device => device.Name == name && device.Role == SoundRole.StageBox);

    private string In(string device) => IsBox(device) ? $"{device}/in" : device;

    private string Out(string device) => IsBox(device) ? $"{device}/out" : device;

    private string Lead(Link link) => Leads([link.Address]).FirstOrDefault() ?? "no lead";

    // Up to two leads by name and length; of more the first and the last, since lengths differ.
    private IEnumerable<string> Leads(IEnumerable<Address> links)
    {
        var runs = links.Select(plan.Cables.Of).OfType<Run>().DistinctBy(run => run.Address).ToList();
        return runs.Count > 2
            ? [$"{runs[0].Label} to", $"{runs[^1].Label}"]
            : runs.Select(run => run.MadeUp.Value is { } length ? $"{run.Label}, {speech.Say(length)}" : run.Label);
    }
}
