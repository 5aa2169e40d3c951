using Scriban.Runtime;

namespace Advance.Sheets.Templating;

/// <summary>
/// Prints views by templates. Each value is escaped, unknown names are faults, a template that runs away is stopped, and each letter of the
/// output knows its place in a template. Templates are read when they are first used. For one thread at a time.
/// </summary>
/// <param name="library">The templates.</param>
/// <param name="limits">Where a template is stopped. Default <see cref="TemplateLimits"/> as it comes.</param>
public sealed class TemplateEngine(TemplateLibrary library, TemplateLimits? limits = null)
{
    private readonly Dictionary<string, ParsedTemplate> parsed = new(StringComparer.Ordinal);
    private readonly TemplateParser parser = new(library);

    internal TemplateLibrary Library => library;

    internal TemplateLimits Limits { get; } = limits ?? new();

    /// <summary>Prints a view. Never throws for what a template can be to blame for: all of that is in the result's faults.</summary>
    /// <param name="name">The template's name, such as <c>sheets/day-sheet.html</c>.</param>
    /// <param name="view">
    /// An immutable record. Templates see its public properties in snake case (<c>MicOrDi</c> as <c>mic_or_di</c>): cells, texts, numbers,
    /// yes and no, words of enumerations (as <c>tape-up</c>), other records, and lists of them.
    /// </param>
    public RenderedTemplate Render(string name, object view)
    {
        if (Find(name) is not { } template)
        {
            var nowhere = new Frame(new SourceText(name, ""));
            var cure = NearestName.Cure(name, library.Names);
            return Failed(name, nowhere, [new(nowhere.Source.At(0), IncludeFunction.Unknown(name)) { Cure = cure }]);
        }

        var frame = new Frame(template.Source);
        if (template.Faults.Count > 0)
        {
            return Failed(name, frame, template.Faults);
        }

        var run = new RenderRun(this, Globals(view), frame);
        run.Print(template);
        return new(name, run.Output.ToString(), run.Output.Map, run.Faults.All, run.IsWhole);
    }

    internal ParsedTemplate? Find(string name)
    {
        if (!parsed.TryGetValue(name, out var template) && library.Find(name) is { } text)
        {
            template = parser.Parse(new SourceText(name, text));
            parsed.Add(name, template);
        }

        return template;
    }

    private static RenderedTemplate Failed(string name, Frame frame, IReadOnlyList<TemplateFault> faults) =>
        new(name, "", new SourceMap([new Piece(0, frame, 0, IsCopied: true)]), faults, IsWhole: false);

    private static ScriptObject Globals(object view)
    {
        var shown = ViewMembers.Of(view.GetType());
        var globals = new ScriptObject();
        foreach (var name in shown.Names)
        {
            globals.SetValue(name, shown.Get(view, name), readOnly: true);
        }

        return globals;
    }
}
