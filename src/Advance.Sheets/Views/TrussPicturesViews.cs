using Advance.Domain.Facts;
using Advance.Domain.Wording;
using Advance.Planning;
using Advance.Sheets.Drawings;

namespace Advance.Sheets.Views;

/// <summary>Makes the pictures of trusses.</summary>
internal static class TrussPicturesViews
{
    /// <summary>Null where no truss has a known length.</summary>
    public static TrussPicturesView? Of(Plan plan)
    {
        var trusses = plan.Rigging.Trusses.Where(truss => truss.Placed.Truss.Length.IsKnown).ToList();
        return trusses.Count == 0 ? null : new TrussPicturesView(
            [.. trusses.Select(truss => PictureOf(truss, plan))],
            Cells.Head(trusses.Aggregate(Doubts.None, (sum, truss) => sum.With(truss.RestsOn).With(truss.Placed.Trim.RestsOn).With(Doubts.Of(truss.Placed.Truss.Length.Doubt)))));
    }

    private static TrussPicturesView.Picture PictureOf(TrussPlan truss, Plan plan) => new(
        $"truss-{Slug.Of(truss.Name)}",
        truss.Name,
        truss.Placed.Truss.RunsUpstage ? "from stage left, downstage at the left" : "from the audience, stage right at the left",
        truss.Loads.Count > 0 ? new Cells(plan).WithUnit(truss.Loads[0].Weight) : Cell.Blank)
    {
        IsCut = TrussElevationDrawing.HeightsOf(plan, truss).IsCut,
        Sideways = truss.Sideways.IsPushed ? SidewaysOf(truss.Sideways, plan) : Cell.Blank,
        HasForces = truss.Study is not null,
        Unplaced = string.Join(", ", truss.Loads.Skip(1).Where(load => load.From is null).Select(load => load.What)),
    };

    private static Cell SidewaysOf(TrussSideways sideways, Plan plan)
    {
        var cells = new Cells(plan);
        var together = sideways.Together.Value is { } share ? $"with what hangs {Numbers.Plain(100 * share, 0)} % of what it bears" : "what it bears that way is not known";
        var pressed = sideways.Pressed.Value is { Newtons: > 0 } ? $", {cells.WithUnit(sideways.Pressed).Text} from end to end" : "";
        var moment = cells.WithUnit(sideways.Moment);
        return moment with { Text = $"{moment.Text} sideways{pressed}, {together}", Address = null };
    }
}
