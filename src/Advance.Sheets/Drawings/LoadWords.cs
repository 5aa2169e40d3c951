using Advance.Domain.Figures;
using Advance.Domain.Wording;
using UnitsNet;

namespace Advance.Sheets.Drawings;

/// <summary>Loads and lengths on drawings of what hangs: short, in whole kg or lb.</summary>
internal static class LoadWords
{
    /// <summary><c>220 kg</c>, <c>220 kg TBC</c> where a question is open behind it, <c>? kg</c> where nobody knows.</summary>
    public static string Of(Figure<Mass> figure, Speech speech)
    {
        var isMetric = speech.Units == Domain.Wording.UnitSystem.Metric;
        var amount = figure.Value is { } mass ? Numbers.Plain(isMetric ? mass.Kilograms : mass.Pounds, 0) : "?";
        return $"{amount} {(isMetric ? "kg" : "lb")}{(figure.RestsOn.Any ? " TBC" : "")}";
    }

    /// <summary>The same of what is asked of a length: <c>trim 6 m</c>.</summary>
    public static string Of(string what, Figure<Length> figure, Speech speech) =>
        $"{what} {(figure.Value is { } length ? speech.Say(length) : "?")}{(figure.RestsOn.Any ? " TBC" : "")}";
}
