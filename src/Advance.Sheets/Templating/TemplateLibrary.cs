using System.Reflection;

namespace Advance.Sheets.Templating;

/// <summary>
/// Templates, partials and what else stands in the folder of templates, by name: <c>sheets/day-sheet.html</c>. The shipped ones stand in
/// the assembly; a company's own are handed over as text and take the place of those with the same name. Nothing here opens a file.
/// </summary>
public sealed class TemplateLibrary
{
    private const string Folder = "templates/";

    private readonly Assembly assembly;
    private readonly Dictionary<string, string> resources;
    private readonly IReadOnlyDictionary<string, string> own;

    private TemplateLibrary(Assembly assembly, Dictionary<string, string> resources, IReadOnlyDictionary<string, string> own)
    {
        this.assembly = assembly;
        this.resources = resources;
        this.own = own;
        Names = [.. resources.Keys.Union(own.Keys).Order(StringComparer.Ordinal)];
        Added = [.. own.Keys.Where(name => !resources.ContainsKey(name)).Order(StringComparer.Ordinal)];
    }

    /// <summary>The templates that come with the program.</summary>
    public static TemplateLibrary Shipped { get; } = In(typeof(TemplateLibrary).Assembly);

    /// <summary>All names, in ordinal order.</summary>
    public IReadOnlyList<string> Names { get; }

    /// <summary>
    /// The names among the company's own that take the place of nothing, in ordinal order: partials of their own, or a name that was meant
    /// to be another.
    /// </summary>
    public IReadOnlyList<string> Added { get; }

    /// <summary>The templates embedded in an assembly as resources whose names begin with <c>templates/</c>.</summary>
    public static TemplateLibrary In(Assembly assembly)
    {
        var named = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var resource in assembly.GetManifestResourceNames())
        {
            // MSBuild names resources with the separators of the system that it ran on.
            var path = resource.Replace('\\', '/');
            if (path.StartsWith(Folder, StringComparison.Ordinal))
            {
                named.Add(path[Folder.Length..], resource);
            }
        }

        return new(assembly, named, new Dictionary<string, string>(StringComparer.Ordinal));
    }

    /// <summary>The same templates with a company's own in the place of those with the same name, and beside them.</summary>
    /// <param name="own">Text by name, with forward slashes, relative to the company's folder of templates.</param>
    public TemplateLibrary With(IReadOnlyDictionary<string, string> own)
    {
        var all = new Dictionary<string, string>(this.own, StringComparer.Ordinal);
        foreach (var (name, text) in own)
        {
            all[name] = text;
        }

        return new(assembly, resources, all);
    }

    /// <summary>Whether there is a template of that name.</summary>
    public bool Has(string name) => own.ContainsKey(name) || resources.ContainsKey(name);

    /// <summary>The text of a template, or null where there is none of that name.</summary>
    public string? Find(string name)
    {
        if (own.TryGetValue(name, out var text))
        {
            return text;
        }

        if (!resources.TryGetValue(name, out var resource))
        {
            return null;
        }

        using var reader = new StreamReader(assembly.GetManifestResourceStream(resource)!);
        return reader.ReadToEnd();
    }
}
