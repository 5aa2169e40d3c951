using Advance.Sheets.Templating;

namespace Advance.Sheets.Markup.Scanning;

/// <summary>Takes faults by their offset in the markup and leads them back to the template that wrote it.</summary>
internal sealed class MarkupFaults(SourceMap map)
{
    private readonly List<Placed> found = [];

    /// <summary>In the order of their places, each once.</summary>
    public IReadOnlyList<TemplateFault> All
    {
        get
        {
            var faults = new FaultList();
            foreach (var placed in found.Count > 1 ? found.OrderBy(entry => entry.At) : found.AsEnumerable())
            {
                faults.Add(placed.Fault);
            }

            return faults.All;
        }
    }

    public void Add(int at, string says, string cure = "", int length = 1)
    {
        var (frame, offset) = map.Find(at);
        var fault = new TemplateFault(frame.Source.At(offset, length), says) { Cure = cure, IncludedAt = frame.IncludedAt() };
        found.Add(new(at, fault));
    }

    /// <summary>For a message that tells of a second place.</summary>
    public string Place(int at) => map.At(at).ToString();

    private sealed record Placed(int At, TemplateFault Fault);
}
