using Advance.Domain.Facts;
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
        HasForces = truss.Study is not null,
        Unplaced = string.Join(", ", truss.Loads.Skip(1).Where(load => load.From is null).Select(load => load.What)),
    };
}
