using Advance.Sheets.Templating;

namespace Advance.Tests.Sheets.Templating;

/// <summary>Renders templates that stand in the tests.</summary>
internal static class Rendering
{
    public const string Name = "sheets/test.html";

    public static RenderedTemplate Render(string template, object? view = null, TemplateLimits? limits = null) =>
        RenderAll(new() { [Name] = template }, view, limits);

    public static RenderedTemplate RenderAll(Dictionary<string, string> templates, object? view = null, TemplateLimits? limits = null) =>
        new TemplateEngine(TemplateLibrary.In(typeof(Rendering).Assembly).With(templates), limits).Render(Name, view ?? new NoView());

    public static string Text(string template, object? view = null)
    {
        var rendered = Render(template, view);
        Assert.Empty(rendered.Faults);
        Assert.True(rendered.IsWhole);
        return rendered.Text;
    }

    public static string OnlyFault(string template, object? view = null, TemplateLimits? limits = null) =>
        Assert.Single(Render(template, view, limits).Faults).ToString();

    private sealed record NoView;
}
