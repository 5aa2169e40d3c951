namespace Advance.Sheets.Markup.Subset;

/// <summary>The whole subset: the one table that markup is read by and the guide is written from.</summary>
internal static class Forms
{
    public static IReadOnlyList<Form> All { get; } = [.. SheetForms.All, .. BlockForms.All, .. GroupForms.All, .. TableForms.All, .. LineForms.All];

    private static readonly ILookup<string, Form> ByName = All.ToLookup(form => form.Name, StringComparer.Ordinal);

    /// <summary>The names of all elements.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. ByName.Select(named => named.Key)];

    /// <summary>The elements of a name; empty for a name that is not known.</summary>
    public static IEnumerable<Form> Named(string name) => ByName[name];
}
