using Scriban.Runtime;

namespace Advance.Sheets.Templating;

/// <summary>
/// All functions that templates have. Those that Scriban has too do the same as there; what reaches the clock, chance, files or a compiler,
/// or can be made to run for ever, is not among them. The functions that come with Scriban are not even loaded, which is quicker as well.
/// </summary>
internal static class TemplateFunctions
{
    public static IReadOnlyList<TemplateFunction> All { get; } =
        [IncludeFunction.Function, .. TextFunctions.All, .. ListFunctions.All, .. NumberFunctions.All];

    /// <summary>The functions as templates find them, in their groups.</summary>
    public static ScriptObject Globals { get; } = Group();

    private static ScriptObject Group()
    {
        var globals = new ScriptObject();
        foreach (var function in All)
        {
            var at = globals;
            var path = function.Name.Split('.');
            foreach (var group in path[..^1])
            {
                if (!at.ContainsKey(group))
                {
                    at.SetValue(group, new ScriptObject(), readOnly: true);
                }

                at = (ScriptObject)at[group]!;
            }

            at.SetValue(path[^1], function, readOnly: true);
        }

        return globals;
    }
}
