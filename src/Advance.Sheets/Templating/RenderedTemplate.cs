namespace Advance.Sheets.Templating;

/// <summary>What a template wrote, with the way back to its source.</summary>
/// <param name="Name">The template's name.</param>
/// <param name="Text">Markup in the subset; not yet checked.</param>
/// <param name="Map">From a place in the text to a place in a template.</param>
/// <param name="Faults">What is wrong with the template itself, in the order found.</param>
/// <param name="IsWhole">False where the template was stopped, so that the text breaks off somewhere.</param>
public sealed record RenderedTemplate(string Name, string Text, SourceMap Map, IReadOnlyList<TemplateFault> Faults, bool IsWhole)
{
    /// <summary>Markup that no template had to write.</summary>
    /// <param name="name">What faults call it.</param>
    /// <param name="text">Markup in the subset.</param>
    public static RenderedTemplate Of(string name, string text) =>
        new(name, text, new SourceMap([new Piece(0, new Frame(new SourceText(name, text)), 0, IsCopied: true)]), [], IsWhole: true);
}
