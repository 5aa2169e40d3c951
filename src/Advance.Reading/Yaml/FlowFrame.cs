namespace Advance.Reading.Yaml;

/// <summary>An open bracket or brace, and how far its present entry has come.</summary>
/// <param name="at">Where it was opened.</param>
/// <param name="open"><c>[</c> or <c>{</c>.</param>
internal sealed class FlowFrame(int at, char open)
{
    public int At { get; } = at;

    public char Open { get; } = open;

    /// <summary>Where the entry's text starts; -1 before it.</summary>
    public int Entry { get; set; } = -1;

    /// <summary>The colon after the entry's key; -1 before it.</summary>
    public int Colon { get; set; } = -1;

    /// <summary>Whether the next sign that is not blank starts a key or a value.</summary>
    public bool ExpectsStart { get; set; } = true;

    public bool IsClosedBy(char close) => close == (Open == '[' ? ']' : '}');

    public void StartEntry()
    {
        Entry = -1;
        Colon = -1;
        ExpectsStart = true;
    }
}
