using System.Globalization;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>What a truss carries: fixtures numbered on from each other that weigh alike in one row, with the place of each.</summary>
internal static class LoadRows
{
    /// <summary>In the order of the plan, each row where its first load stands.</summary>
    public static IEnumerable<HoistTableView.Load> Of(TrussPlan truss, RiggingCells rigging)
    {
        var rows = new List<List<CarriedLoad>>();
        foreach (var load in truss.Loads)
        {
            if (rows.Find(row => GoesOn(row[^1], load)) is { } row)
            {
                row.Add(load);
            }
            else
            {
                rows.Add([load]);
            }
        }

        return rows.Select(row => RowOf(row, rigging));
    }

    private static HoistTableView.Load RowOf(List<CarriedLoad> row, RiggingCells rigging)
    {
        var first = row[0];
        return new HoistTableView.Load(
            Cell.Of(row.Count == 1 ? first.What : string.Create(CultureInfo.InvariantCulture, $"{row.Count} × {NumberedLoad.Of(first)!.Value.Name} {NumberedLoad.Of(first)!.Value.Number}–{NumberedLoad.Of(row[^1])!.Value.Number}, each")),
            rigging.Mass(first.Weight) with { Strong = true },
            RiggingCells.How(first.How),
            PlaceOf(row, rigging),
            first.Offset != 0 ? rigging.Length(first.Offset) : Cell.Blank);
    }

    private static Cell PlaceOf(List<CarriedLoad> row, RiggingCells rigging)
    {
        var isOpen = row.Exists(load => load.Where.Any);
        return row[0] is { To: { } end, From: { } start } ? Cell.Of($"{rigging.Length(start).Text} to {rigging.Length(end).Text}") with { Tbc = isOpen ? "" : null }
            : row.TrueForAll(load => load.From is not null) ? Cell.Of(string.Join(", ", row.Select(load => rigging.Length(load.From).Text))) with { Tbc = isOpen ? "" : null }
            : rigging.Length((double?)null);
    }

    private static bool GoesOn(CarriedLoad before, CarriedLoad next) =>
        NumberedLoad.IsNext(before, next) && before.How == next.How && before.Offset == next.Offset
        && before.From is not null && next.From is not null && before.To is null && next.To is null;
}
