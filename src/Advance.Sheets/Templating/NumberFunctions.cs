using System.Globalization;
using Scriban.Runtime;

namespace Advance.Sheets.Templating;

/// <summary>Functions on numbers. Values on paper come from views with their units; these are for widths, shares and counts.</summary>
internal static class NumberFunctions
{
    public static IReadOnlyList<TemplateFunction> All { get; } =
    [
        new("math.round", (_, given) => Math.Round(Number(given), Math.Clamp((int)given[1]!, 0, 15), MidpointRounding.AwayFromZero))
        {
            Takes = [typeof(object), typeof(int)],
            Means = "to so many decimals, halves away from zero",
            Example = "math.round 2.345 2",
            Prints = "2.35",
        },
        new("math.floor", (_, given) => Math.Floor(Number(given)))
        {
            Takes = [typeof(object)],
            Means = "the whole number below",
            Example = "math.floor 2.9",
            Prints = "2",
        },
        new("math.ceil", (_, given) => Math.Ceiling(Number(given)))
        {
            Takes = [typeof(object)],
            Means = "the whole number above",
            Example = "math.ceil 2.1",
            Prints = "3",
        },
        new("math.abs", (_, given) => Math.Abs(Number(given)))
        {
            Takes = [typeof(object)],
            Means = "without its sign",
            Example = "math.abs (0 - 2)",
            Prints = "2",
        },
    ];

    private static double Number(ScriptArray given) => given[0] is IConvertible and not string and not bool
        ? Convert.ToDouble(given[0], CultureInfo.InvariantCulture)
        : throw new StoppedException("This is not a number.");
}
