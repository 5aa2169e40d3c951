using Advance.Domain.Facts;
using Advance.Domain.Findings;
using Advance.Domain.Wording;
using Advance.Reading.Files;
using Advance.Reading.Yaml;

namespace Advance.Reading.Shapes;

/// <summary>What shapes share while they read: where findings and open questions go, what is being read, and the way to other files.</summary>
internal sealed class Reader(IFileDoor files)
{
    private readonly List<Finding> findings = [];
    private readonly List<Doubt> doubts = [];
    private readonly List<(string Name, Mark At)> trail = [];

    /// <summary>The one way to files.</summary>
    public IFileDoor Files { get; } = files;

    /// <summary>All files read so far.</summary>
    public Sources Sources { get; } = new();

    /// <summary>All findings so far.</summary>
    public ICollection<Finding> Findings => findings;

    /// <summary>All open questions that somebody wrote, whether or not a value carries them.</summary>
    public IReadOnlyList<Doubt> Doubts => doubts;

    /// <summary>The name of the thing being read: its key in the map that holds it; empty for an item of a list.</summary>
    public string Name => trail.Count == 0 ? "" : trail[^1].Name;

    /// <summary>Where that name stands.</summary>
    public Mark NamedAt => trail.Count == 0 ? Mark.Nowhere : trail[^1].At;

    /// <summary>The path of keys that leads to what is being read: <c>services / A / residual-protection</c>.</summary>
    public string Subject => string.Join(" / ", trail.Where(step => step.Name.Length > 0).Select(step => step.Name));

    /// <summary>Goes into a value under its key, or into an item without a name. Every one is left again.</summary>
    public void Enter(string name, Mark at) => trail.Add((name, at));

    /// <summary>Leaves what was entered last.</summary>
    public void Leave() => trail.RemoveAt(trail.Count - 1);

    /// <summary>Says what is wrong.</summary>
    /// <returns>False, to be handed on.</returns>
    public bool Fault(string rule, Mark at, Words says, Words cure) => Fault(new Finding($"reading/{rule}", Severity.Error, at, says, cure));

    /// <summary>Says what is wrong.</summary>
    /// <returns>False, to be handed on.</returns>
    public bool Fault(Finding finding)
    {
        findings.Add(finding);
        return false;
    }

    /// <summary>Remembers an open question about what is being read.</summary>
    public Doubt Ask(Phrases.Tail tail, ScalarNode node)
    {
        var doubt = new Doubt(Subject, node.At, tail.Who, tail.By, tail.Body > 0 ? node.Text[..tail.Body] : null);
        doubts.Add(doubt);
        return doubt;
    }

    /// <summary>The open question about something that was left out.</summary>
    public Doubt Miss(Mark at)
    {
        var doubt = new Doubt(Subject, at, LeftOut: true);
        doubts.Add(doubt);
        return doubt;
    }
}
