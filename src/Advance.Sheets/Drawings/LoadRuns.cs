using System.Globalization;
using Advance.Planning;

namespace Advance.Sheets.Drawings;

/// <summary>Finds loads along a truss that one label can stand for: fixtures numbered on from each other that weigh alike.</summary>
internal static class LoadRuns
{
    /// <summary>Places in a row that one label stands for; a place of several loads, or of another kind, stands alone.</summary>
    /// <param name="places">What hangs in each place, along the truss.</param>
    public static IEnumerable<IReadOnlyList<IReadOnlyList<CarriedLoad>>> Of(IReadOnlyList<IReadOnlyList<CarriedLoad>> places)
    {
        List<IReadOnlyList<CarriedLoad>> run = [];
        foreach (var place in places)
        {
            if (run.Count > 0 && !GoesOn(run[^1], place))
            {
                yield return run;
                run = [];
            }

            run.Add(place);
        }

        if (run.Count > 0)
        {
            yield return run;
        }
    }

    /// <summary>A run by name: <c>Fixture 1–6</c>.</summary>
    /// <param name="run">Of two places and more.</param>
    public static string NameOf(IReadOnlyList<IReadOnlyList<CarriedLoad>> run)
    {
        var (name, first) = Read(run[0][0])!.Value;
        var last = Read(run[^1][0])!.Value.Number;
        return string.Create(CultureInfo.InvariantCulture, $"{name} {Math.Min(first, last)}–{Math.Max(first, last)}");
    }

    private static bool GoesOn(IReadOnlyList<CarriedLoad> before, IReadOnlyList<CarriedLoad> next) =>
        before is [var one] && next is [var other] && Read(one) is { } from && Read(other) is { } to
        && from.Name == to.Name && Math.Abs(from.Number - to.Number) == 1 && one.Weight.Value?.Kilograms == other.Weight.Value?.Kilograms && one.Weight.RestsOn.Any == other.Weight.RestsOn.Any;

    private static (string Name, int Number)? Read(CarriedLoad load) =>
        load.What.LastIndexOf(' ') is var at and > 0 && int.TryParse(load.What[(at + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? (load.What[..at], number) : null;
}
