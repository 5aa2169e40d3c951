namespace Advance.Sheets.Markup.Subset;

/// <summary>The whole subset: the one table that markup is read by and the guide is written from.</summary>
internal static class Forms
{
    public static IReadOnlyList<Form> All { get; } =
        [.. SheetForms.All, .. BlockForms.All, .. GroupForms.All, .. TableForms.All, .. LineForms.All];

    private static readonly Dictionary<string, List<Form>> ByName =
        All.GroupBy(form => form.Name).ToDictionary(named => named.Key, named => named.ToList(), StringComparer.Ordinal);

    /// <summary>The names of all elements.</summary>
    public static IReadOnlyCollection<string> Names => ByName.Keys;

    /// <summary>The elements of a name; empty for a name that is not known.</summary>
    public static List<Form> Named(string name) => ByName.GetValueOrDefault(name) ?? [];
}
