using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Wording;
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

        var cells = new Cells(Speech.Of(plan.Brief.Company.Units));
        return new TruckSheetView(
            [.. plan.Brief.Gig.Trucks.Select(truck => new PairView(truck.Name, VehicleOf(truck, plan, cells)))],
            [.. Totals(plan, cells)],
            [.. plan.Load.InOrder.Select((row, index) => RowOf(row, index + 1, cells))],
            FindingViews.Of(plan, finding => finding.Rule.StartsWith("truck/", StringComparison.Ordinal) || finding.Rule == "access/unpack-outside"),
            plan.Brief.Gig.Trucks.Count > 1,
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

    private static TruckSheetView.Row RowOf(LoadRow row, int place, Cells cells) => new(
        Cell.Number(place),
        Cell.Of(CaseWords.Of(row.Unit)) with { Strong = true },
        Cell.Of(CaseWords.Contents(row.Unit)),
        Cell.Of(row.Task?.What.Split(',')[0] ?? "spare, or asked for loose"),
        Cell.Number(row.Unit.Count),
        cells.Mass(row.Unit.Gross) with { Tbc = null });
}
