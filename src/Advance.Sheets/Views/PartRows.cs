using System.Globalization;
using Advance.Domain.Wording;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>How much of each sling, steel and shackle of a truss is used: what is alike in one row, with the worst of them.</summary>
internal sealed class PartRows(Plan plan, RiggingCells rigging)
{
    /// <summary>Parts of the picks, then those of the bridles that the truss hangs on.</summary>
    public IEnumerable<HoistTableView.Part> Of(TrussPlan truss)
    {
        var bridles = plan.Rigging.Bridles.Where(bridle => bridle.On.Any(pick => truss.Picks.Contains(pick)));
        return Rows(truss.Picks.SelectMany(pick => pick.Parts.Select(use => (pick.Name, use))), truss.Picks.Count)
            .Concat(bridles.SelectMany(bridle => Rows(bridle.Legs.SelectMany(leg => leg.Parts.Select(use => ($"{bridle.Name} to {leg.Point}", use))), 0)));
    }

    /// <summary>The legs of the bridles that a truss hangs on.</summary>
    public IEnumerable<HoistTableView.Leg> LegsOf(TrussPlan truss) =>
        from bridle in plan.Rigging.Bridles
        where bridle.On.Any(pick => truss.Picks.Contains(pick))
        from leg in bridle.Legs
        select new HoistTableView.Leg(
            Cell.Of(bridle.Name) with { Strong = true },
            Cell.Of(leg.Point),
            Cell.Of(leg.Placed.Gear.Count > 0 ? GearWords.Of(leg.Placed.Gear, leg.Placed.Made) : bridle.Placed.IsOff ? "nothing in the stock makes it" : "not written") with { Tbc = bridle.Placed.RestsOn.Any ? "" : null },
            rigging.Length(leg.Length) with { Tbc = bridle.Placed.RestsOn.Any ? "" : null },
            leg.Placed.Made is null ? Cell.Blank : rigging.Length(leg.Placed.Wanted) with { Tbc = bridle.Placed.RestsOn.Any ? "" : null },
            Cell.Number(leg.FromHorizontal, Numbers.Plain(leg.FromHorizontal, 0)) with { Tbc = bridle.Placed.RestsOn.Any ? "" : null },
            rigging.Mass(leg.Pull) with { Strong = true },
            bridle.Placed.Apex is { } apex ? rigging.Length(apex.Z) with { Tbc = bridle.Placed.RestsOn.Any ? "" : null } : Cell.Blank);

    /// <summary>Whether legs or drops were made up with shackles of which nobody says how long they are.</summary>
    public bool CountsNoShackles(TrussPlan truss) =>
        plan.Rigging.Bridles.Where(bridle => bridle.On.Any(pick => truss.Picks.Contains(pick))).SelectMany(bridle => bridle.Placed.Legs).Select(leg => leg.Made)
            .Concat(truss.Picks.Select(pick => pick.Placed.DropMade))
            .Any(made => made?.Shackle is { } shackle && shackle.Lifting?.Length is not { IsKnown: true });

    private IEnumerable<HoistTableView.Part> Rows(IEnumerable<(string At, PartUse Use)> uses, int all) => uses
        .GroupBy(one => (one.Use.Part.Item, one.Use.Hitch, one.Use.IsOver))
        .Select(alike => RowOf([.. alike], all));

    private HoistTableView.Part RowOf(List<(string At, PartUse Use)> alike, int all)
    {
        var worst = alike.MaxBy(one => one.Use.May.Value is { Kilograms: > 0 } may && one.Use.Carries.Value is { } load ? load.Kilograms / may.Kilograms : double.MaxValue).Use;
        var at = alike.Select(one => one.At).Distinct(StringComparer.Ordinal).ToList();
        return new HoistTableView.Part(
            Cell.Of(GearWords.NameOf(worst.Part)),
            Cell.Of(at.Count == all && all > 1 ? "each pick" : string.Join(", ", at)),
            Cell.Of(GearWords.Laid(worst.Hitch)),
            Cell.Of(worst.IsOver ? "at rest, over people" : "moving"),
            rigging.Mass(worst.Carries),
            rigging.Mass(worst.May),
            RiggingCells.Share(worst.Carries, worst.May),
            worst.Breaks is { } times ? Cell.Of(times.ToString("0.0", CultureInfo.InvariantCulture)) with { Tbc = worst.Carries.RestsOn.Any ? "" : null } : Cell.Of("?"));
    }
}
