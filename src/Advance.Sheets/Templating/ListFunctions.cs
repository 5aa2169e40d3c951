using System.Collections;
using Scriban.Runtime;

namespace Advance.Sheets.Templating;

/// <summary>Functions on lists.</summary>
internal static class ListFunctions
{
    public static IReadOnlyList<TemplateFunction> All { get; } =
    [
        new("array.size", (_, given) => List(given).Count)
        {
            Takes = [typeof(object)],
            Means = "how many there are",
            Example = "array.size [\"a\", \"b\"]",
            Prints = "2",
        },
        new("array.first", (_, given) => List(given) is { Count: > 0 } list ? list[0] : null)
        {
            Takes = [typeof(object)],
            Means = "the first, or nothing",
            Example = "array.first [\"a\", \"b\"]",
            Prints = "a",
        },
        new("array.last", (_, given) => List(given) is { Count: > 0 } list ? list[^1] : null)
        {
            Takes = [typeof(object)],
            Means = "the last, or nothing",
            Example = "array.last [\"a\", \"b\"]",
            Prints = "b",
        },
        new("array.limit", (_, given) => Part(List(given).Take((int)given[1]!)))
        {
            Takes = [typeof(object), typeof(int)],
            Means = "no more than so many, from the first on",
            Example = "[\"a\", \"b\", \"c\"] | array.limit 2 | array.join \", \"",
            Prints = "a, b",
        },
        new("array.offset", (_, given) => Part(List(given).Skip((int)given[1]!)))
        {
            Takes = [typeof(object), typeof(int)],
            Means = "without the first so many",
            Example = "[\"a\", \"b\", \"c\"] | array.offset 1 | array.join \", \"",
            Prints = "b, c",
        },
        new("array.reverse", (_, given) => Part(Enumerable.Reverse(List(given))))
        {
            Takes = [typeof(object)],
            Means = "from the last to the first",
            Example = "[\"a\", \"b\"] | array.reverse | array.join \", \"",
            Prints = "b, a",
        },
        new("array.contains", (_, given) => List(given).Contains(given[1]))
        {
            Takes = [typeof(object), typeof(object)],
            Means = "whether it is in the list",
            Example = "if array.contains [\"a\", \"b\"] \"b\"; \"yes\"; end",
            Prints = "yes",
        },
        new("array.join", Join)
        {
            Takes = [typeof(object), typeof(string)],
            Means = "all texts of a list as one, with something between them",
            Example = "array.join [\"a\", \"b\"] \" + \"",
            Prints = "a + b",
        },
    ];

    private static List<object?> List(ScriptArray given) => given[0] switch
    {
        null => [],
        string => throw new StoppedException("This is a text and not a list."),
        IList list => [.. list.Cast<object?>()],
        IEnumerable range => [.. range.Cast<object?>()],
        _ => throw new StoppedException("This is not a list."),
    };

    private static ScriptArray Part(IEnumerable<object?> items) => new(items);

    private static string Join(TemplateScope scope, ScriptArray given)
    {
        var link = given[1] as string ?? "";
        var text = new System.Text.StringBuilder();
        foreach (var item in List(given))
        {
            text.Append(text.Length > 0 ? link : "").Append(scope.ObjectToString(item));
            if (text.Length > scope.Run.Limits.Text)
            {
                throw new StoppedException($"The template was stopped: a text grew longer than {scope.Run.Limits.Text} characters.");
            }
        }

        return text.ToString();
    }
}
