using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Planning;
using UnitsNet;

namespace Advance.Sheets.Views;

/// <summary>Makes the truck sheet.</summary>
internal static class TruckSheetViews
{
    /// <summary>Null where nothing is loaded.</summary>
    public static TruckSheetView? Of(Plan plan)
    {
        if (plan.Load.InOrder.Count == 0)
        {
            return null;
        }

        var cells = new Cells(plan);
        return new TruckSheetView(
            [.. plan.Brief.Gig.Trucks.Select(truck => new PairView(truck.Name, VehicleOf(truck, plan, cells)))],
            [.. Totals(plan, cells)],
            [.. Groups(plan, cells)],
            FindingViews.Of(plan, finding => finding.Rule.StartsWith("truck/", StringComparison.Ordinal) || finding.Rule == "access/unpack-outside"),
            cells.MassUnit,
            Cells.Head(plan.Load.Gross.RestsOn.With(plan.Crew.RestsOn)));
    }

    private static Cell VehicleOf(Truck truck, Plan plan, Cells cells)
    {
        var kind = truck.Item.Is(out var item) ? plan.Brief.Stock.Find(item) : null;
        var (driver, parks) = (cells.Of(truck.Driver), cells.Of(truck.Parks));
        string[] said = [kind?.Name ?? item ?? "", driver.Text.Length > 0 ? $"driver {driver.Text}" : "driver ______", parks.Text.Length > 0 ? $"on {parks.Text}" : ""];
        return Cell.Of(string.Join("; ", said.Where(part => part.Length > 0))) with { Tbc = driver.Tbc ?? parks.Tbc ?? (truck.Item.Doubt is { } doubt ? cells.Note(doubt) : null) };
    }

    private static IEnumerable<PairView> Totals(Plan plan, Cells cells)
    {
        yield return new PairView("Load with cases", cells.WithUnit(plan.Load.Gross));
        if (plan.Load.Truck is not { } load)
        {
            yield break;
        }

        yield return new PairView("May carry", Judged(cells.WithUnit(load.Payload), plan.Load.Gross.AtMost(load.Payload)));
        yield return new PairView("Floor taken, as stacked", cells.WithUnit(load.Floor));
        yield return new PairView("Floor there is", Judged(cells.WithUnit(load.Length), load.Floor.AtMost(load.Length)));
        yield return new PairView("Load if packed tight", Cubic(load.Volume, cells));
        yield return new PairView("Load space", Cubic(load.Space, cells));
        yield return new PairView("Straps across", cells.Of(load.Straps));
    }

    private static Cell Judged(Cell cell, Verdict verdict) => cell with
    {
        Verdict = verdict switch
        {
            Verdict.Fails => Paper.Tree.Verdict.Fails,
            Verdict.CannotBeJudged => Paper.Tree.Verdict.CannotBeJudged,
            _ => cell.Verdict,
        },
    };

    private static Cell Cubic(Figure<double> figure, Cells cells) =>
        cells.WithUnit(new Figure<Volume>(figure.Value is { } volume ? Volume.FromCubicMeters(volume) : null, figure.RestsOn, figure.Why));

    // What is needed for one task stands together; cases that hold the same are one row.
    private static IEnumerable<TruckSheetView.Group> Groups(Plan plan, Cells cells)
    {
        var place = 1;
        foreach (var task in Runs(plan.Load.InOrder, row => row.Task?.What ?? ""))
        {
            var rows = new List<TruckSheetView.Row>();
            foreach (var alike in Runs(task, row => (row.Unit.Item, row.Unit.IsCase, CaseWords.Contents(row.Unit))))
            {
                rows.Add(RowOf([.. alike.Select(row => row.Unit)], place, cells));
                place += alike.Count;
            }

            yield return new TruckSheetView.Group(task[0].Task?.What ?? "Spare, or asked for loose", rows);
        }
    }

    private static IEnumerable<IReadOnlyList<LoadRow>> Runs<T>(IReadOnlyList<LoadRow> rows, Func<LoadRow, T> alike)
    {
        for (var first = 0; first < rows.Count;)
        {
            var run = rows.Skip(first).TakeWhile(row => Equals(alike(row), alike(rows[first]))).ToList();
            yield return run;
            first += run.Count;
        }
    }

    private static TruckSheetView.Row RowOf(IReadOnlyList<TravellingUnit> alike, int place, Cells cells) => new(
        alike.Count == 1 ? Cell.Number(place) : Cell.Of($"{place}–{place + alike.Count - 1}"),
        Cell.Of(CaseWords.Of(alike)) with { Strong = true },
        Cell.Of(CaseWords.Contents(alike[0])),
        Cell.Number(alike.Sum(unit => unit.Count)),
        cells.Mass(alike[0].Gross) with { Tbc = null });
}
