
namespace Advance.Planning;

/// <summary>The links that one run makes, at different times, and what is written on its leads.</summary>
/// <param name="Label">Unlike that of any other run.</param>
/// <param name="Links">In the order of their addresses; at least one.</param>
internal sealed record RunLinks(string Label, IReadOnlyList<Link> Links)
{
    /// <summary>Puts links together that use one port of a stage box in different acts, and labels each run.</summary>
    /// <param name="links">All that a lead must make, in any order.</param>
    /// <param name="stageBoxes">Names of the boxes whose ports act after act uses.</param>
    /// <param name="distributions">Names of the distributions.</param>
    public static IReadOnlyList<RunLinks> Of(IEnumerable<Link> links, IReadOnlySet<string> stageBoxes, IReadOnlySet<string> distributions)
    {
        var runs = new List<List<Link>>();
        foreach (var link in links.OrderBy(link => link.Address))
        {
            var port = SharedPort(link, stageBoxes);
            var shared = port is null ? null : runs.FirstOrDefault(run => SharedPort(run[0], stageBoxes) == port && run[0].Carries == link.Carries && MayShare(run, link));
            if (shared is null)
            {
                runs.Add([link]);
            }
            else
            {
                shared.Add(link);
            }
        }

        var labels = new RunLabels(runs.Select(run => run[0]), distributions);
        return [.. runs.Select(run => new RunLinks(labels.Of(run[0]), run))];
    }

    // The numbered port of a stage box, at whose other end stands something that comes and goes with its act.
    private static Port? SharedPort(Link link, IReadOnlySet<string> stageBoxes) => (link.From.Port, link.To.Port) switch
    {
        ({ Number: null }, { Number: not null } port) when stageBoxes.Contains(port.Device) => port,
        ({ Number: not null } port, { Number: null }) when stageBoxes.Contains(port.Device) => port,
        _ => null,
    };

    private static bool MayShare(List<Link> run, Link link) => link.Act is not null && run.All(other => other.Act is not null && other.Act != link.Act);
}
