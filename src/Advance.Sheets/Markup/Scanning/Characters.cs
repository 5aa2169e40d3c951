namespace Advance.Sheets.Markup.Scanning;

/// <summary>
/// Text between tags. White space that stands in it as such is a template's indentation: a run of it is one blank, and at both ends it is
/// only remembered. White space that was written as a reference is text like any other and stays as it is.
/// </summary>
internal sealed class Characters(int at, string text, bool leads, bool trails) : Node(at)
{
    /// <summary>With all references resolved; empty where there was only indentation.</summary>
    public string Text { get; } = text;

    /// <summary>True when indentation stands before it.</summary>
    public bool Leads { get; } = leads;

    /// <summary>True when indentation stands after it.</summary>
    public bool Trails { get; } = trails;
}
