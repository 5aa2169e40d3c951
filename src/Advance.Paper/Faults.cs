namespace Advance.Paper;

/// <summary>Gathers faults, each one once, in the order in which they were met.</summary>
internal sealed class Faults
{
    private readonly List<Fault> list = [];
    private readonly HashSet<Fault> seen = [];

    /// <summary>The id of the sheet that is being printed; empty between sheets.</summary>
    public string Sheet { get; set; } = "";

    /// <summary>The id or first words of the block that is being printed.</summary>
    public string Place { get; set; } = "";

    public IReadOnlyList<Fault> All => list;

    public void Add(FaultKind kind, string text)
    {
        var fault = new Fault(kind, Sheet, Place, text);
        if (seen.Add(fault))
        {
            list.Add(fault);
        }
    }

    public void AddRange(IEnumerable<Fault> others)
    {
        foreach (var fault in others)
        {
            if (seen.Add(fault))
            {
                list.Add(fault);
            }
        }
    }
}
