namespace Advance.Sheets.Templating;

/// <summary>Faults in the order in which they were found. A loop that meets the same fault at the same place again adds nothing.</summary>
internal sealed class FaultList
{
    private readonly List<TemplateFault> found = [];
    private readonly HashSet<string> known = new(StringComparer.Ordinal);

    public IReadOnlyList<TemplateFault> All => found;

    public void Add(TemplateFault fault)
    {
        if (known.Add($"{fault.At} {fault.Says}"))
        {
            found.Add(fault);
        }
    }

    public void Add(Frame frame, int offset, string says, string cure = "", int length = 1) =>
        Add(new TemplateFault(frame.Source.At(offset, length), says) { Cure = cure, IncludedAt = frame.IncludedAt() });
}
