using System.Globalization;
using Advance.Domain.Stocks;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Names of items and cases, short enough for a list or a label.</summary>
internal static class CaseWords
{
    /// <summary><c>Deck cart</c>: what stands before the first comma of the name on the shelf label; all of it where that is one word only.</summary>
    public static string Short(Kind? kind, string item)
    {
        var first = kind?.Name.Split(',')[0] ?? item;
        return kind is not null && !first.Contains(' ', StringComparison.Ordinal) ? kind.Name : first;
    }

    /// <summary><c>Lead crate, sound 1</c>; a case that the gig names keeps its name; loose pieces have that of their kind.</summary>
    public static string Of(TravellingUnit unit)
    {
        if (!unit.IsCase)
        {
            return unit.Kind?.Name ?? unit.Item;
        }

        return unit.Name.StartsWith(unit.Item + " ", StringComparison.Ordinal)
            ? $"{Short(unit.Kind, unit.Item)}, {unit.Name[(unit.Item.Length + 1)..]}"
            : unit.Name == unit.Item ? Short(unit.Kind, unit.Item) : $"{unit.Name} ({Short(unit.Kind, unit.Item)})";
    }

    /// <summary>Several alike together: <c>Lead crate, sound 1–3</c>.</summary>
    public static string Of(IReadOnlyList<TravellingUnit> alike)
    {
        var names = alike.Select(Of).ToList();
        return names.Count == 1
            ? names[0]
            : $"{names[0][..names[0].LastIndexOf(' ')]} {Numbers([.. names.Select(name => name[(name.LastIndexOf(' ') + 1)..])])}";
    }

    /// <summary><c>1, 3</c>, or <c>1–4</c> where they follow each other.</summary>
    public static string Numbers(IReadOnlyList<string> numbers)
    {
        var whole = numbers.Select(number => int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var read) ? read : -1).ToList();
        var isRun = whole.Count > 2 && whole.Zip(whole.Skip(1)).All(pair => pair.Second == pair.First + 1);
        return isRun ? $"{numbers[0]}–{numbers[^1]}" : string.Join(", ", numbers);
    }

    /// <summary><c>12 × Vocal microphone; 2 × Talkback microphone</c>; empty for what is loose or empty.</summary>
    public static string Contents(TravellingUnit unit) =>
        string.Join("; ", unit.Contents.Select(packed => $"{packed.Count} × {Short(packed.Kind, packed.Item)}"));

    /// <summary><c>3 × Lead crate, Rack 6 units + 2 more</c>.</summary>
    /// <param name="units">Alike ones are counted together, in their order.</param>
    /// <param name="most">How many kinds are named.</param>
    public static string Few(IEnumerable<TravellingUnit> units, int most)
    {
        var kinds = units.GroupBy(unit => unit.Item, StringComparer.Ordinal)
            .Select(group => (Count: group.Sum(unit => unit.Count), Name: Short(group.First().Kind, group.Key)))
            .Select(kind => kind.Count == 1 ? kind.Name : $"{kind.Count} × {kind.Name}")
            .ToList();
        var shown = string.Join(", ", kinds.Take(most));
        return kinds.Count > most ? $"{shown} + {kinds.Count - most} more" : shown;
    }
}
