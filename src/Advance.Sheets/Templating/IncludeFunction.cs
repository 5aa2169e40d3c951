using Scriban.Runtime;
using Scriban.Syntax;

namespace Advance.Sheets.Templating;

/// <summary>
/// Prints a partial where it is called: <c>include "partials/contact.html" person: row</c>. It writes straight to the output instead of
/// returning text, so that nothing is escaped twice and each letter keeps its place in the partial.
/// </summary>
internal static class IncludeFunction
{
    public const string Name = "include";

    public static TemplateFunction Function { get; } = new(Name, Include)
    {
        Takes = [typeof(string)],
        TakesNamed = true,
        IsStatement = true,
        Means = "prints another template, which sees the view and the parameters it is given by name",
        Example = "include \"partials/example.html\" words: \"A & B\"",
        Prints = "<p>A &amp; B</p>\n",
    };

    public static string Unknown(string name) => $"There is no template `{name}`.";

    private static object? Include(TemplateScope scope, ScriptArray arguments)
    {
        if (arguments.Count > 1)
        {
            throw new StoppedException("What a partial is given has a name, as in `include \"partials/contact.html\" person: row`.");
        }

        var given = new ScriptObject();
        foreach (var name in arguments.ScriptObject.Keys)
        {
            given.SetValue(name, Checked(name, arguments.ScriptObject[name]), readOnly: false);
        }

        scope.Run.Include((string)arguments[0]!, scope.CurrentSpan, given);
        return null;
    }

    // A function would print its own template's text as if it stood in the partial.
    private static object? Checked(string name, object? value) =>
        value is ScriptFunction ? throw new StoppedException($"A partial cannot be given a function: `{name}`.") : value;
}
